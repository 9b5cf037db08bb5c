package rimebook.panels.web;

import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.panels.OfficialId;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatOfficial;
import rimebook.panels.SeatPlace;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/**
 * Who shall sit where, as chosen.
 *
 * @param place the place as {@link #value(SeatPlace)} writes it
 * @param official the identity of the official
 * @param overrideReason why a bond to a team may be set aside
 */
record SeatForm(@Nullable String place, @Nullable String official, @Nullable String overrideReason) {

	/** A place in a form or an address: "judge-3". */
	static String value(SeatPlace place) {
		return place.kind().name().toLowerCase(Locale.ROOT) + "-" + place.number();
	}

	SeatOfficial seating(EventId event) {
		SeatPlace wanted = place(Required.text("place", this.place, 40));
		return new SeatOfficial(event, wanted.kind(), wanted.number(), chosen(),
				Required.optional("overrideReason", this.overrideReason, 500));
	}

	private static SeatPlace place(String value) {
		int dash = value.lastIndexOf('-');
		try {
			SeatKind kind = SeatKind.valueOf(value.substring(0, Math.max(dash, 0)).toUpperCase(Locale.ROOT));
			return new SeatPlace(kind, Integer.parseInt(value.substring(dash + 1)));
		}
		catch (IllegalArgumentException ex) {
			throw new RuleViolationException("seat-unknown", "place",
					"There is no seat '" + value + "'; please choose one from the list.");
		}
	}

	private OfficialId chosen() {
		try {
			return OfficialId.of(Required.text("official", this.official, 40));
		}
		catch (IllegalArgumentException ex) {
			throw new RuleViolationException("field-malformed", "official", "Please choose an official from the list.");
		}
	}

}
