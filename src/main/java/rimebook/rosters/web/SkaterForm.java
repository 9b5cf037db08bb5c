package rimebook.rosters.web;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.entries.ClubView;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.SkaterView;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What is typed about somebody who skates.
 *
 * @param birthDate year-month-day
 * @param another whether it is nobody who is known by that name
 */
record SkaterForm(@Nullable String givenName, @Nullable String familyName, @Nullable String birthDate,
		@Nullable String membershipNumber, @Nullable String club, @Nullable String role, @Nullable String reason,
		@Nullable Boolean another, @Nullable Integer version) {

	SkaterForm {
		another = Boolean.TRUE.equals(another);
	}

	static SkaterForm empty(ClubView.Id club) {
		return new SkaterForm("", "", "", "", club.toString(), PlaceRole.SKATES.name(), "", false, 0);
	}

	static SkaterForm of(SkaterView skater) {
		SkaterView.Facts facts = skater.facts();
		return new SkaterForm(facts.givenName(), facts.familyName(),
				(facts.birthDate() != null) ? facts.birthDate().toString() : "", facts.membershipNumber(),
				facts.club().toString(), "", "", false, skater.version());
	}

	DraftSkater draft() {
		return new DraftSkater(text(this.givenName), text(this.familyName), day("birthDate", this.birthDate),
				text(this.membershipNumber), clubId());
	}

	PlaceRole part() {
		return PlaceRole.ALTERNATE.name().equals(this.role) ? PlaceRole.ALTERNATE : PlaceRole.SKATES;
	}

	boolean isAnother() {
		return Boolean.TRUE.equals(this.another);
	}

	int seen() {
		return (this.version != null) ? this.version : 0;
	}

	private ClubView.Id clubId() {
		try {
			return new ClubView.Id(UUID.fromString(text(this.club)));
		}
		catch (IllegalArgumentException ex) {
			throw RuleViolationException.ofField("field-missing", "club", Sentence.of("shared.field.missing"));
		}
	}

	/** A day as it is typed, {@code null} for none. */
	static @Nullable LocalDate day(String field, @Nullable String typed) {
		try {
			return text(typed).isBlank() ? null : LocalDate.parse(text(typed).strip());
		}
		catch (DateTimeException ex) {
			throw RuleViolationException.ofField("field-no-day", field, Sentence.of("rosters.no-day"));
		}
	}

	private static String text(@Nullable String typed) {
		return (typed != null) ? typed : "";
	}

}
