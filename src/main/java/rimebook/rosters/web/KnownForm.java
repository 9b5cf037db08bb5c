package rimebook.rosters.web;

import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.rosters.PlaceRole;
import rimebook.rosters.SkaterView;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Somebody who is known and is to be on a roster, as chosen. */
record KnownForm(@Nullable String skater, @Nullable String role, @Nullable String reason) {

	static KnownForm empty() {
		return new KnownForm("", PlaceRole.SKATES.name(), "");
	}

	SkaterView.Id id() {
		try {
			return new SkaterView.Id(UUID.fromString((this.skater != null) ? this.skater : ""));
		}
		catch (IllegalArgumentException ex) {
			throw RuleViolationException.ofField("field-missing", "skater", Sentence.of("shared.field.missing"));
		}
	}

	PlaceRole part() {
		return PlaceRole.ALTERNATE.name().equals(this.role) ? PlaceRole.ALTERNATE : PlaceRole.SKATES;
	}

}
