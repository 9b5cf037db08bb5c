package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.marks.ListAuthorisations;
import rimebook.marks.PaperKeying;
import rimebook.marks.PerformanceStatus;
import rimebook.marks.PerformanceView;
import rimebook.marks.SegmentRun;

/** Everybody has skated, every card is closed, and nothing behind it is open. */
@Component
@Order(1)
class RunGuard implements SignatureGuard {

	private final SegmentRun run;

	private final PaperKeying keying;

	private final ListAuthorisations authorisations;

	private final Competitions competitions;

	RunGuard(SegmentRun run, PaperKeying keying, ListAuthorisations authorisations, Competitions competitions) {
		this.run = run;
		this.keying = keying;
		this.authorisations = authorisations;
		this.competitions = competitions;
	}

	@Override
	@Transactional(readOnly = true)
	public List<SignatureCondition> conditions(SegmentId segment) {
		List<PerformanceView> all = this.run.performances(segment);
		List<SignatureCondition> conditions = new ArrayList<>();
		conditions.add(performances(all, "/desk/stand/" + segment));
		conditions.add(cards(all, "/desk/stand/" + segment));
		conditions.add(keyings(segment));
		if (this.competitions.eventOf(segment).isJudgedByPoints()) {
			conditions.add(lists(all, "/desk/keying/" + segment));
		}
		return conditions;
	}

	private static SignatureCondition performances(List<PerformanceView> all, String path) {
		long waiting = all.stream().filter((performance) -> performance.status() == PerformanceStatus.WAITING).count();
		return (waiting == 0)
				? SignatureCondition.met("performances", "All " + all.size() + " performances are done.", path)
				: SignatureCondition.missing("performances",
						waiting + " of " + all.size() + " teams are still to skate.", path);
	}

	private static SignatureCondition cards(List<PerformanceView> all, String path) {
		String open = all.stream()
			.filter((performance) -> !performance.status().isDone()
					&& performance.status() != PerformanceStatus.WAITING)
			.map((performance) -> "No. " + performance.startNumber())
			.collect(Collectors.joining(", "));
		return open.isEmpty() ? SignatureCondition.met("cards", "No card is open.", path) : SignatureCondition
			.missing("cards", "The cards of " + open + " are open; the referee closes them at the stand.", path);
	}

	private SignatureCondition keyings(SegmentId segment) {
		String path = "/desk/keying/" + segment;
		List<String> unsettled = this.keying.unsettled(segment);
		return unsettled.isEmpty()
				? SignatureCondition.met("keyings", "Nothing that was keyed in from paper waits.", path)
				: SignatureCondition.missing("keyings", String.join(". ", unsettled) + ".", path);
	}

	private SignatureCondition lists(List<PerformanceView> all, String path) {
		Optional<PerformanceView> open = all.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.CLOSED)
			.filter((performance) -> this.authorisations.ofPerformance(performance.id()).isEmpty())
			.findFirst();
		return open
			.map((performance) -> SignatureCondition.missing("lists",
					"The called elements of No. " + performance.startNumber()
							+ " are not authorised by the technical controller.",
					path))
			.orElseGet(() -> SignatureCondition.met("lists", "The called elements of every closed card are authorised.",
					path));
	}

}
