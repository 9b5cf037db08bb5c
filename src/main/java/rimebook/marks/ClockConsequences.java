package rimebook.marks;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.PointsRules;

/**
 * What was deducted, or told to the panel, because of what the clock found: it goes with
 * the touch that it rests on.
 */
@Component
class ClockConsequences {

	private static final int LONGEST_QUOTE = 480;

	private final DeductionNotes deductions;

	private final RemarkRepository remarks;

	private final PointsBook points;

	private final SegmentRun run;

	ClockConsequences(DeductionNotes deductions, RemarkRepository remarks, PointsBook points, SegmentRun run) {
		this.deductions = deductions;
		this.remarks = remarks;
		this.points = points;
		this.run = run;
	}

	/** Name what rests on these touches, deductions first; empty for nothing. */
	List<String> words(Performance performance, Set<Instant> touches) {
		List<String> words = new ArrayList<>();
		if (!touches.isEmpty()) {
			deducted(performance, touches).forEach((item) -> words.add(words(performance, item)));
			told(performance, touches).forEach((remark) -> words.add(remark.text()));
		}
		return words;
	}

	/**
	 * Take it back: deductions are taken out, and the panel is told that a notice no
	 * longer holds.
	 * @param asked how many of them whoever takes the touch back was asked about
	 * @throws rimebook.shared.ConflictException {@code clock-takes-along} if there are
	 * more or fewer
	 */
	void takeBack(Performance performance, Set<Instant> touches, int asked, Actor actor) {
		List<String> along = words(performance, touches);
		if (along.size() != asked) {
			throw ClockRefusals.takesAlong(performance, along);
		}
		if (!along.isEmpty()) {
			this.deductions.takeOut(performance, touches, actor);
			told(performance, touches)
				.forEach((remark) -> this.run.note(performance.id(), RemarkKind.ICE, takenBack(remark), actor));
		}
	}

	private List<NotedDeduction> deducted(Performance performance, Set<Instant> touches) {
		return this.points.deductions(performance.id())
			.map(DeductionList::items)
			.orElse(List.of())
			.stream()
			.filter((item) -> item.isTakenFor(touches))
			.toList();
	}

	private List<RemarkView> told(Performance performance, Set<Instant> touches) {
		return this.remarks.findByPerformanceOrderByNotedAt(performance.id().value())
			.stream()
			.map(Remark::view)
			.filter((remark) -> remark.touch() != null && touches.contains(remark.touch()))
			.toList();
	}

	private String words(Performance performance, NotedDeduction noted) {
		PointsRules rules = this.points.ruleSet(performance.segment());
		return rules.deduction(noted.item()).map((rule) -> words(rule, noted.count())).orElse(noted.item());
	}

	private static String words(DeductionRule rule, int count) {
		return rule.name() + " -" + rule.points(count);
	}

	private static String takenBack(RemarkView remark) {
		String text = remark.text();
		return "Taken back: " + text.substring(0, Math.min(text.length(), LONGEST_QUOTE));
	}

}
