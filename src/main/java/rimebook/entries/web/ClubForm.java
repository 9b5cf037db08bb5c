package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

import rimebook.entries.ClubView;
import rimebook.entries.Renaming;

/** What is typed to mend a club. */
record ClubForm(
		@NotBlank(message = "{entries.form.club.missing}") @Size(max = 120,
				message = "{entries.form.club.long}") String name,
		@NotBlank(message = "{entries.form.town.missing}") @Size(max = 120,
				message = "{entries.form.town.long}") String town,
		@Size(max = 60, message = "{entries.form.section.long}") @Nullable String section, @Nullable Integer version) {

	static ClubForm of(Renaming.KnownClub known) {
		return new ClubForm(known.club().name(), known.club().town(), known.section(), known.version());
	}

	Renaming.ChangeClub order(ClubView.Id club) {
		return new Renaming.ChangeClub(club, (this.version != null) ? this.version : -1, this.name, this.town,
				(this.section != null) ? this.section : "");
	}

}
