package rimebook.rosters.web;

import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What somebody on a roster is to become, as chosen.
 *
 * @param insteadOf for whom an alternate steps in: the place and its version with a blank
 * between them; empty for nobody
 */
record PlaceForm(@Nullable String role, @Nullable String insteadOf, @Nullable String reason,
		@Nullable Integer version) {

	static PlaceForm of(RosterView.Place place) {
		return new PlaceForm(place.role().name(), "", "", place.version());
	}

	PlaceRole part() {
		try {
			return PlaceRole.valueOf(((this.role != null) ? this.role : "").toUpperCase(Locale.ROOT));
		}
		catch (IllegalArgumentException ex) {
			throw RuleViolationException.ofField("field-missing", "role", Sentence.of("shared.field.missing"));
		}
	}

	boolean stepsIn() {
		return this.insteadOf != null && this.insteadOf.contains(" ");
	}

	RosterView.PlaceId leaving() {
		return RosterView.PlaceId.of(leavingWords()[0]);
	}

	int leavingVersion() {
		return Integer.parseInt(leavingWords()[1]);
	}

	int seen() {
		return (this.version != null) ? this.version : 0;
	}

	private String[] leavingWords() {
		String typed = (this.insteadOf != null) ? this.insteadOf : "";
		if (!typed.matches("[0-9a-fA-F-]{36} \\d{1,9}")) {
			throw RuleViolationException.ofField("field-missing", "insteadOf", Sentence.of("shared.field.missing"));
		}
		return typed.split(" ");
	}

}
