package rimebook.results;

import java.util.ArrayList;
import java.util.List;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.performances.LooseEnds;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** Everybody has skated, every card is closed, and nothing behind it is open. */
@Component
@Order(1)
class RunGuard implements SignatureGuard {

	private final SegmentRun run;

	private final List<LooseEnds> ends;

	RunGuard(SegmentRun run, List<LooseEnds> ends) {
		this.run = run;
		this.ends = ends;
	}

	@Override
	@Transactional(readOnly = true)
	public List<SignatureChecklist.SignatureCondition> conditions(SegmentId segment) {
		List<PerformanceView> all = this.run.performances(segment);
		List<SignatureChecklist.SignatureCondition> conditions = new ArrayList<>();
		conditions.add(performances(all, "/desk/stand/" + segment));
		conditions.add(cards(all, "/desk/stand/" + segment));
		this.ends.stream()
			.flatMap((each) -> each.of(segment).stream())
			.forEach((end) -> conditions.add(condition(end, "/desk/keying/" + segment)));
		return conditions;
	}

	private static SignatureChecklist.SignatureCondition performances(List<PerformanceView> all, String path) {
		long waiting = all.stream().filter((performance) -> performance.status() == PerformanceStatus.WAITING).count();
		return (waiting == 0)
				? SignatureChecklist.SignatureCondition.met("performances", Sentence.of("results.all-done", all.size()),
						path)
				: SignatureChecklist.SignatureCondition.missing("performances",
						Sentence.of("results.still-to-skate", Math.toIntExact(waiting), all.size()), path);
	}

	private static SignatureChecklist.SignatureCondition cards(List<PerformanceView> all, String path) {
		Sentence open = Series.withCommas(all.stream()
			.filter((performance) -> !performance.status().isDone()
					&& performance.status() != PerformanceStatus.WAITING)
			.map((performance) -> Sentence.of("results.number", performance.startNumber()))
			.toList());
		return open.isEmpty()
				? SignatureChecklist.SignatureCondition.met("cards", Sentence.of("results.no-card-open"), path)
				: SignatureChecklist.SignatureCondition.missing("cards", Sentence.of("results.cards-open", open), path);
	}

	private static Sentence whole(List<Sentence> open) {
		return open.stream()
			.map((one) -> Sentence.of("results.loose-end", one))
			.reduce((one, other) -> Sentence.of("results.loose-ends", one, other))
			.orElse(Sentence.NONE);
	}

	private static SignatureChecklist.SignatureCondition condition(LooseEnds.LooseEnd end, String path) {
		return end.open().isEmpty() ? SignatureChecklist.SignatureCondition.met(end.name(), end.settled(), path)
				: SignatureChecklist.SignatureCondition.missing(end.name(), whole(end.open()), path);
	}

}
