package rimebook.live;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.results.Standings;

/** Puts together what is public of an event. */
@Component
class EventReader {

	private final SegmentReader segments;

	private final Standings standings;

	EventReader(SegmentReader segments, Standings standings) {
		this.segments = segments;
		this.standings = standings;
	}

	EventFacts read(EventView event) {
		StandingTable table = this.standings.latest(event.id()).map(StandingTable::of).orElse(null);
		return new EventFacts(event, this.segments.all(event), table);
	}

	/** What there is to tell of the segment on which most eyes are. */
	Tidings tidings(Watched watched) {
		return this.segments.tidings(watched.facts().event(), watched.segment());
	}

	/** What there is to tell of an event before its standing. */
	Tidings tidings(EventFacts facts) {
		return this.segments.tidings(facts);
	}

}
