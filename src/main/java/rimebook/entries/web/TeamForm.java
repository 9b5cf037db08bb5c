package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

import rimebook.entries.Renaming;
import rimebook.entries.TeamView;

/** What is typed to mend a team. */
record TeamForm(
		@NotBlank(message = "{entries.form.team.missing}") @Size(max = 120,
				message = "{entries.form.team.long}") String name,
		@Size(max = 120, message = "{entries.form.spoken.long}") @Nullable String spokenAs, @Nullable Integer version) {

	static TeamForm of(Renaming.KnownTeam known) {
		return new TeamForm(known.team().name(), known.team().spokenAs(), known.version());
	}

	Renaming.ChangeTeam order(TeamView.Id team) {
		return new Renaming.ChangeTeam(team, (this.version != null) ? this.version : -1, this.name,
				(this.spokenAs != null) ? this.spokenAs : "");
	}

}
