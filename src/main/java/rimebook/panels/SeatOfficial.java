package rimebook.panels;

import rimebook.competition.EventId;
import rimebook.shared.Required;

/**
 * Give an official a seat that is empty.
 *
 * @param number which one of its kind, from 1
 * @param overrideReason why a bond to a team may be set aside here, up to 500 characters;
 * dropped where nothing speaks against the seating
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record SeatOfficial(EventId event, SeatKind kind, int number, OfficialId official, String overrideReason) {

	public SeatOfficial {
		overrideReason = Required.optional("overrideReason", overrideReason, 500);
	}

}
