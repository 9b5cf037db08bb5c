package rimebook.managers.web;

import java.time.DateTimeException;
import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

import rimebook.managers.OwnRoster;
import rimebook.pages.Given;
import rimebook.rosters.PlaceRole;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What is typed about somebody on the roster. What is known of birth date and membership
 * number is never filled in.
 *
 * @param birthDate year-month-day
 */
record PersonForm(@Nullable String givenName, @Nullable String familyName, @Nullable String birthDate,
		@Nullable String membershipNumber, @Nullable String role) {

	static final PersonForm EMPTY = new PersonForm("", "", "", "", PlaceRole.SKATES.name());

	static PersonForm of(OwnRoster.Person person) {
		return new PersonForm(person.givenName(), person.familyName(), "", "", person.role().name());
	}

	OwnRoster.Facts facts() {
		return new OwnRoster.Facts(Given.text(this.givenName), Given.text(this.familyName),
				day("birthDate", this.birthDate), Given.text(this.membershipNumber));
	}

	PlaceRole part() {
		return part(this.role);
	}

	static PlaceRole part(@Nullable String role) {
		return Given.read("role", role, PlaceRole::valueOf, Sentence.of("managers.part-missing"));
	}

	/** A day as it is typed, {@code null} for none. */
	static @Nullable LocalDate day(String field, @Nullable String typed) {
		String text = Given.text(typed).strip();
		try {
			return text.isEmpty() ? null : LocalDate.parse(text);
		}
		catch (DateTimeException ex) {
			throw RuleViolationException.ofField("field-no-day", field, Sentence.of("rosters.no-day"));
		}
	}

}
