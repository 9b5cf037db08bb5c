package rimebook.competition;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.SubjectNames;

/**
 * The names of competitions, events and segments, and of what has the identity of one.
 */
@Component
@Transactional(readOnly = true)
class CompetitionSubjects implements SubjectNames {

	private final Competitions competitions;

	private final EventRepository events;

	private final Whereabouts whereabouts;

	CompetitionSubjects(Competitions competitions, EventRepository events, Whereabouts whereabouts) {
		this.competitions = competitions;
		this.events = events;
		this.whereabouts = whereabouts;
	}

	/** A result has the identity of its segment or, put together, of its event. */
	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return switch (subject) {
			case "competition" -> Optional.of(competition(new CompetitionId(id)));
			case "event" -> Optional.of(this.whereabouts.of(new EventId(id), ""));
			case "segment", "starting-order", "required-list" ->
				Optional.of(this.whereabouts.of(new SegmentId(id), ""));
			case "result" -> Optional.of(this.events.findBySegment(id).isPresent()
					? this.whereabouts.of(new SegmentId(id), "") : this.whereabouts.of(new EventId(id), ""));
			default -> Optional.empty();
		};
	}

	private SubjectNames.Named competition(CompetitionId id) {
		CompetitionView competition = this.competitions.competition(id);
		return new SubjectNames.Named(competition.name(), competition.zone());
	}

	@Override
	public Optional<ZoneId> zone() {
		List<ZoneId> zones = this.competitions.all()
			.stream()
			.filter((competition) -> competition.state() != CompetitionState.ARCHIVED)
			.map(CompetitionView::zone)
			.distinct()
			.toList();
		return (zones.size() == 1) ? Optional.of(zones.get(0)) : Optional.empty();
	}

}
