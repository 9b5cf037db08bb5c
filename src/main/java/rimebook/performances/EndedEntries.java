package rimebook.performances;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryEvent;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/** Lets the entry of a team say the same as its performances. */
@Component
class EndedEntries {

	private final PerformanceRepository performances;

	private final Competitions competitions;

	private final Entries entries;

	EndedEntries(PerformanceRepository performances, Competitions competitions, Entries entries) {
		this.performances = performances;
		this.competitions = competitions;
		this.entries = entries;
	}

	/**
	 * Take hold of the competition, as every act on an entry does, before anything else.
	 * @throws NotFoundException if there is no such performance
	 */
	void hold(PerformanceId id) {
		SegmentId segment = this.performances.findSegmentById(id.value())
			.map(SegmentId::new)
			.orElseThrow(() -> NotFoundException.of("performance", id));
		this.competitions.holding(this.competitions.eventOf(segment).id());
	}

	/** A team that is withdrawn from a segment has withdrawn from the event. */
	void follow(EntryId entry, PerformanceStatus next, String reason, Actor actor) {
		if (next == PerformanceStatus.WITHDRAWN) {
			this.entries.leave(entry, reason, actor);
		}
	}

	/**
	 * Once no performance is withdrawn any more, the team takes part again.
	 * @return what is to be published once the standing of the segment is
	 */
	Optional<EntryEvent.Reinstated> followBack(EntryId entry, PerformanceStatus before, String reason, Actor actor) {
		boolean still = this.performances.findByEntry(entry.value())
			.stream()
			.anyMatch((performance) -> performance.status() == PerformanceStatus.WITHDRAWN);
		return (before == PerformanceStatus.WITHDRAWN && !still) ? this.entries.comeBack(entry, reason, actor)
				: Optional.empty();
	}

}
