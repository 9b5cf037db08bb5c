package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.entries.EntryGuard;
import rimebook.wording.Sentence;

/**
 * Once a segment is open, a withdrawal that left a gap in it is taken back by two
 * officials; once its first team is called, nobody comes into the event any more.
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

	@Override
	public Optional<Sentence> refusesEntry(EventId event) {
		return this.competitions.event(event)
			.segments()
			.stream()
			.filter((segment) -> this.performances.existsBySegmentAndCalledAtNotNull(segment.id().value()))
			.findFirst()
			.map((segment) -> Sentence.of("performances.no-entry-after-call", segment.name()));
	}

	private Optional<Sentence> refusal(EntryView entry, SegmentView segment) {
		List<Performance> all = this.performances.findBySegmentOrderByStartNumber(segment.id().value());
		Optional<Performance> own = all.stream().filter((one) -> one.entry().equals(entry.id())).findFirst();
		if (own.isEmpty() && all.stream().anyMatch(Performance::wasCalled)) {
			return Optional.of(Sentence.of("performances.drawn-without-team", segment.name(), entry.team().name()));
		}
		return own.filter((performance) -> performance.status() == PerformanceStatus.WITHDRAWN)
			.map((performance) -> Sentence.of("performances.withdrawn-in-open-segment", performance.startNumber(),
					segment.name()));
	}

}
