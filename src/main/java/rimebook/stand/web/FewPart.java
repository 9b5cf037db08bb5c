package rimebook.stand.web;

import java.util.Map;

import org.jspecify.annotations.Nullable;

import rimebook.arrival.TooFew;
import rimebook.entries.EntryId;
import rimebook.stand.StandView;

/**
 * That the team on the ice or, between two, the next one is too few people.
 *
 * @param team empty where nobody is left
 * @param few {@code null} where they are enough, or nobody knows
 */
record FewPart(String team, @Nullable TooFew few) implements LivePart {

	static FewPart of(StandView view, Map<EntryId, TooFew> few) {
		StandView.Now onIce = view.now();
		StandView.Row row = (onIce != null) ? onIce.row() : view.next();
		return (row == null) ? new FewPart("", null) : new FewPart(row.team(), few.get(row.performance().entry()));
	}

}
