package rimebook.stand.web;

import java.util.List;

import rimebook.competition.EventId;
import rimebook.panels.SeatConflict;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** Who sits in judgement on a team they are bound to, and nobody has set it aside. */
record BoundPart(EventId event, List<Bound> seats) implements LivePart {

	static BoundPart of(EventId event, List<SeatConflict> conflicts) {
		return new BoundPart(event,
				conflicts.stream()
					.filter(SeatConflict::isUnsettled)
					.map((conflict) -> new Bound(conflict.place().spoken(), conflict.official(),
							Series.withSemicolons(conflict.unsettled())))
					.toList());
	}

	/** One seat, and what binds whoever sits there. */
	record Bound(Sentence seat, String official, Sentence grounds) {
	}

}
