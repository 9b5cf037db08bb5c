package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.entries.EntryGuard;
import rimebook.wording.Sentence;

/**
 * Once a segment is open, a withdrawal that left a gap in it is taken back by two
 * officials, and nobody comes into an order that was drawn without them.
 */
@Component
class ReturnAfterOpening implements EntryGuard {

	private final PerformanceRepository performances;

	private final Competitions competitions;

	ReturnAfterOpening(PerformanceRepository performances, Competitions competitions) {
		this.performances = performances;
		this.competitions = competitions;
	}

	@Override
	public Optional<Sentence> refusesReturn(EntryView entry) {
		return this.competitions.event(entry.event())
			.segments()
			.stream()
			.flatMap((segment) -> refusal(entry, segment).stream())
			.findFirst();
	}

	private Optional<Sentence> refusal(EntryView entry, SegmentView segment) {
		List<Performance> all = this.performances.findBySegmentOrderByStartNumber(segment.id().value());
		Optional<Performance> own = all.stream().filter((one) -> one.entry().equals(entry.id())).findFirst();
		if (!all.isEmpty() && own.isEmpty()) {
			return Optional.of(Sentence.of("performances.drawn-without-team", segment.name(), entry.team().name()));
		}
		return own.filter((performance) -> performance.status() == PerformanceStatus.WITHDRAWN)
			.map((performance) -> Sentence.of("performances.withdrawn-in-open-segment", performance.startNumber(),
					segment.name()));
	}

}
