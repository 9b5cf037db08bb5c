package rimebook.competition;

import org.springframework.stereotype.Component;

import rimebook.shared.SubjectNames;

/** Names what hangs on an event or a segment together with the place where it hangs. */
@Component
public class Whereabouts {

	private final Competitions competitions;

	Whereabouts(Competitions competitions) {
		this.competitions = competitions;
	}

	/**
	 * That thing of an event: "Icefern, Junior, Lantern Weekend".
	 * @param thing what it is, empty for the event itself
	 * @throws rimebook.shared.NotFoundException if there is no such event
	 */
	public SubjectNames.Named of(EventId event, String thing) {
		EventView view = this.competitions.event(event);
		return name(view, thing, view.name());
	}

	/**
	 * That thing of a segment: "No. 5 Icefern, Junior, Free skating, Lantern Weekend".
	 * @param thing what it is, empty for the segment itself
	 * @throws rimebook.shared.NotFoundException if there is no such segment
	 */
	public SubjectNames.Named of(SegmentId segment, String thing) {
		EventView view = this.competitions.eventOf(segment);
		return name(view, thing, view.name() + ", " + view.segment(segment).name());
	}

	private SubjectNames.Named name(EventView event, String thing, String place) {
		CompetitionView competition = this.competitions.competition(event.competition());
		return new SubjectNames.Named((thing.isEmpty() ? "" : thing + ", ") + place + ", " + competition.name(),
				competition.zone());
	}

}
