package rimebook.panels.web;

import java.time.DateTimeException;
import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.panels.InterestView;
import rimebook.panels.KnownNames;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What binds an official to a team, as typed.
 *
 * @param team chosen from those that are known, empty for none of them
 * @param otherTeam one that is not in the list
 * @param another whether the person says that it is none of those it is near to
 * @param lastDay year-month-day; empty while it lasts
 */
record InterestForm(@Nullable String kind, @Nullable String team, @Nullable String otherTeam, @Nullable Boolean another,
		@Nullable String lastDay) {

	InterestForm {
		another = Boolean.TRUE.equals(another);
	}

	static InterestForm empty() {
		return new InterestForm("", "", "", false, "");
	}

	Panels.DeclareInterest declared(OfficialView.Id official, KnownNames known) {
		InterestView.Kind bond = Given.read("kind", this.kind, InterestView.Kind::valueOf,
				Sentence.of("panels.bond-missing"));
		return new Panels.DeclareInterest(official, bond, team(known), day(Given.text(this.lastDay).strip()));
	}

	private String team(KnownNames known) {
		String chosen = Given.text(this.team).strip();
		String typed = Given.text(this.otherTeam).strip();
		if (!chosen.isEmpty() && !typed.isEmpty()) {
			throw new RuleViolationException("team-twice", "otherTeam", Sentence.of("panels.team-twice"));
		}
		return known.team("otherTeam", chosen.isEmpty() ? typed : chosen, Boolean.TRUE.equals(this.another));
	}

	private static @Nullable LocalDate day(String typed) {
		try {
			return typed.isEmpty() ? null : LocalDate.parse(typed);
		}
		catch (DateTimeException ex) {
			throw new RuleViolationException("field-malformed", "lastDay", Sentence.of("panels.last-day-malformed"));
		}
	}

}
