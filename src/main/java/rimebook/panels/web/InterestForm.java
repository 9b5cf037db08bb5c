package rimebook.panels.web;

import java.time.DateTimeException;
import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.panels.DeclareInterest;
import rimebook.panels.InterestKind;
import rimebook.panels.OfficialId;
import rimebook.shared.RuleViolationException;

/**
 * What binds an official to a team, as typed.
 *
 * @param lastDay year-month-day; empty while it lasts
 */
record InterestForm(@Nullable String kind, @Nullable String team, @Nullable String lastDay) {

	static InterestForm empty() {
		return new InterestForm("", "", "");
	}

	DeclareInterest declared(OfficialId official) {
		InterestKind bond = Given.read("kind", this.kind, InterestKind::valueOf, "Please choose what the bond is.");
		return new DeclareInterest(official, bond, Given.text(this.team), day(Given.text(this.lastDay).strip()));
	}

	private static @Nullable LocalDate day(String typed) {
		try {
			return typed.isEmpty() ? null : LocalDate.parse(typed);
		}
		catch (DateTimeException ex) {
			throw new RuleViolationException("field-malformed", "lastDay",
					"Last day: please give it as year-month-day, such as 2026-03-01, or leave it empty.");
		}
	}

}
