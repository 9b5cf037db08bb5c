package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.entries.EnterTeam;

/** What is typed to enter a team. */
record EntryForm(
		@NotBlank(message = "{entries.form.team.missing}") @Size(max = 120,
				message = "{entries.form.team.long}") String team,
		@NotBlank(message = "{entries.form.club.missing}") @Size(max = 120,
				message = "{entries.form.club.long}") String club,
		@NotBlank(message = "{entries.form.town.missing}") @Size(max = 120,
				message = "{entries.form.town.long}") String town,
		@Size(max = 120, message = "{entries.form.spoken.long}") @Nullable String spokenAs,
		@Size(max = 500, message = "{entries.form.late.long}") @Nullable String lateReason) {

	EntryForm {
		spokenAs = (spokenAs != null) ? spokenAs : "";
		lateReason = (lateReason != null) ? lateReason : "";
	}

	static EntryForm empty() {
		return new EntryForm("", "", "", "", "");
	}

	EnterTeam order(EventId event) {
		return new EnterTeam(event, this.club, this.town, this.team, this.spokenAs, this.lateReason);
	}

}
