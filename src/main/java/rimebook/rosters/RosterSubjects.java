package rimebook.rosters;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.Whereabouts;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.SubjectNames;

/**
 * People by their names while these are known, places by who has them, rosters and
 * waivers by their teams. The record itself holds none of these names.
 */
@Component
@Transactional(readOnly = true)
class RosterSubjects implements SubjectNames {

	private final Skaters skaters;

	private final Rosters rosters;

	private final Waivers waivers;

	private final Entries entries;

	private final Whereabouts whereabouts;

	private final Competitions competitions;

	RosterSubjects(Skaters skaters, Rosters rosters, Waivers waivers, Entries entries, Whereabouts whereabouts,
			Competitions competitions) {
		this.competitions = competitions;
		this.skaters = skaters;
		this.rosters = rosters;
		this.waivers = waivers;
		this.entries = entries;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return switch (subject) {
			case "skater" -> Optional.of(SubjectNames.Named.of(called(this.skaters.skater(new SkaterView.Id(id)))));
			case "roster-place" -> Optional.of(place(new RosterView.PlaceId(id)));
			case "roster" -> Optional.of(roster(new EntryId(id), ""));
			case "waiver" -> Optional.of(roster(this.waivers.waiver(id).entry(), ""));
			case "eligibility" -> Optional.of(this.whereabouts.of(new EventId(id), ""));
			case "retention" ->
				Optional.of(SubjectNames.Named.of(this.competitions.competition(new CompetitionId(id)).name()));
			default -> Optional.empty();
		};
	}

	private SubjectNames.Named place(RosterView.PlaceId id) {
		return roster(this.rosters.entryOf(id), called(this.rosters.place(id).skater()) + ", ");
	}

	private SubjectNames.Named roster(EntryId id, String who) {
		EntryView entry = this.entries.entry(id);
		return this.whereabouts.of(entry.event(), who + entry.team().name());
	}

	private static String called(SkaterView skater) {
		return skater.isErased() ? "somebody whose data were deleted" : skater.name();
	}

}
