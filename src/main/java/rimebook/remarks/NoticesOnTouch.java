package rimebook.remarks;

import java.time.Instant;
import java.util.List;
import java.util.Set;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.clock.RestsOnTouch;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** What the panel was told because of the clock; it is told that it no longer holds. */
@Component
@Order(NoticesOnTouch.AFTER_DEDUCTIONS)
class NoticesOnTouch implements RestsOnTouch {

	static final int AFTER_DEDUCTIONS = 2;

	private static final int LONGEST_QUOTE = 480;

	private final Remarks remarks;

	NoticesOnTouch(Remarks remarks) {
		this.remarks = remarks;
	}

	@Override
	public List<Sentence> words(PerformanceView performance, Set<Instant> touches) {
		return told(performance, touches).stream().map((remark) -> Sentence.said(remark.text())).toList();
	}

	@Override
	public void takeBack(PerformanceView performance, Set<Instant> touches, Actor actor) {
		told(performance, touches).forEach((remark) -> this.remarks.tell(performance.id(), takenBack(remark), actor));
	}

	private List<Remarks.RemarkView> told(PerformanceView performance, Set<Instant> touches) {
		return this.remarks.ofPerformance(performance.id())
			.stream()
			.filter((remark) -> remark.touch() != null && touches.contains(remark.touch()))
			.toList();
	}

	private static String takenBack(Remarks.RemarkView remark) {
		String text = remark.text();
		return "Taken back: " + text.substring(0, Math.min(text.length(), LONGEST_QUOTE));
	}

}
