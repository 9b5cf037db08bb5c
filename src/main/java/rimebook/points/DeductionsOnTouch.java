package rimebook.points;

import java.time.Instant;
import java.util.List;
import java.util.Set;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.clock.RestsOnTouch;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.PointsRules;
import rimebook.wording.Sentence;

/** What was deducted because of what the clock found. */
@Component
@Order(DeductionsOnTouch.FIRST)
class DeductionsOnTouch implements RestsOnTouch {

	static final int FIRST = 1;

	private final DeductionNotes deductions;

	private final PointsBook book;

	DeductionsOnTouch(DeductionNotes deductions, PointsBook book) {
		this.deductions = deductions;
		this.book = book;
	}

	@Override
	public List<Sentence> words(PerformanceView performance, Set<Instant> touches) {
		List<NotedDeduction> noted = this.book.deductions(performance.id())
			.map(DeductionList::items)
			.orElse(List.of())
			.stream()
			.filter((item) -> item.isTakenFor(touches))
			.toList();
		return noted.isEmpty() ? List.of() : words(noted, this.book.ruleSet(performance.segment()));
	}

	private static List<Sentence> words(List<NotedDeduction> noted, PointsRules rules) {
		return noted.stream()
			.map((item) -> rules.deduction(item.item())
				.map((rule) -> words(rule, item.count()))
				.orElseGet(() -> Sentence.said(item.item())))
			.toList();
	}

	private static Sentence words(DeductionRule rule, int count) {
		return Sentence.said(rule.name() + " -" + rule.points(count));
	}

	@Override
	public void takeBack(PerformanceView performance, Set<Instant> touches, Actor actor) {
		this.deductions.takeOut(performance, touches, actor);
	}

}
