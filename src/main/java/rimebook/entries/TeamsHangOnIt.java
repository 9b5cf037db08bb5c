package rimebook.entries;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/**
 * What teams were entered into, or planned elements for, stays; withdrawn teams as well.
 * So does what asks something of planned elements.
 */
@Component
class TeamsHangOnIt implements CancellationGuard {

	private final EntryRepository entries;

	private final PlannedProgrammeRepository plans;

	private final AnnouncedProgrammeRepository announced;

	private final RequiredProgrammeRepository required;

	TeamsHangOnIt(EntryRepository entries, PlannedProgrammeRepository plans, AnnouncedProgrammeRepository announced,
			RequiredProgrammeRepository required) {
		this.required = required;
		this.entries = entries;
		this.plans = plans;
		this.announced = announced;
	}

	@Override
	public Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		return entered(event, segments).or(() -> planned(segments))
			.or(() -> announced(segments))
			.or(() -> asking(segments));
	}

	private Optional<Sentence> entered(EventView event, List<SegmentView> segments) {
		boolean whole = segments.size() == event.segments().size();
		return (whole && !this.entries.findByEventIdIn(Set.of(event.id().value())).isEmpty())
				? Optional.of(Sentence.of("entries.teams-entered", event.name())) : Optional.empty();
	}

	private Optional<Sentence> planned(List<SegmentView> segments) {
		return segments.stream()
			.filter((segment) -> this.plans.existsBySegment(segment.id().value()))
			.findFirst()
			.map((segment) -> Sentence.of("entries.elements-planned", segment.name()));
	}

	private Optional<Sentence> asking(List<SegmentView> segments) {
		return segments.stream()
			.filter((segment) -> this.required.existsById(segment.id().value()))
			.findFirst()
			.map((segment) -> Sentence.of("entries.required-set", segment.name()));
	}

	private Optional<Sentence> announced(List<SegmentView> segments) {
		return segments.stream()
			.filter((segment) -> this.announced.existsBySegment(segment.id().value()))
			.findFirst()
			.map((segment) -> Sentence.of("entries.announcer-facts-given", segment.name()));
	}

}
