package rimebook.live;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.results.TwoTeams;
import rimebook.shared.NotFoundException;

/** Finds what the addresses of the data name; what is not public is not there. */
@Component
class PublicPlaces {

	private final Published published;

	private final SegmentReader segments;

	private final Standings standings;

	private final TwoTeams twoTeams;

	PublicPlaces(Published published, SegmentReader segments, Standings standings, TwoTeams twoTeams) {
		this.published = published;
		this.segments = segments;
		this.standings = standings;
		this.twoTeams = twoTeams;
	}

	Place segment(String competition, String event, String segment) {
		CompetitionView view = this.published.competition(competition);
		EventView found = this.published.event(view, event);
		return new Place(view, found, this.segments.one(found, this.published.segment(found, segment)));
	}

	/** What there is to tell of a segment. */
	Tidings tidings(Place place) {
		return this.segments.tidings(place.event(), place.facts());
	}

	/** Two teams of a segment in its newest standing. */
	Pair pair(Place place, String one, String other) {
		return pair(Optional.ofNullable(place.facts().version()), one, other, (said, first, second) -> this.twoTeams
			.inSegment(place.event(), place.facts().segment(), said, first, second));
	}

	/** Two teams of an event in its newest standing. */
	Pair pair(EventView event, String one, String other) {
		return pair(this.standings.latest(event.id()), one, other,
				(said, first, second) -> this.twoTeams.inEvent(event, said, first, second));
	}

	private static Pair pair(Optional<ResultVersion> version, String one, String other, Beside.Reasons reasons) {
		return version
			.flatMap((found) -> Beside.of(StandingTable.of(found), one, other, reasons)
				.map((beside) -> new Pair(found, beside)))
			.orElseThrow(() -> NotFoundException.of("entry", one));
	}

	/** A segment with its event and competition. */
	record Place(CompetitionView competition, EventView event, SegmentFacts facts) {
	}

	/** Two teams of a version. */
	record Pair(ResultVersion version, Beside beside) {
	}

}
