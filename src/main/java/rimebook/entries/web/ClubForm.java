package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

import rimebook.entries.ChangeClub;
import rimebook.entries.ClubId;
import rimebook.entries.KnownClub;

/** What is typed to mend a club. */
record ClubForm(
		@NotBlank(message = "{entries.form.club.missing}") @Size(max = 120,
				message = "{entries.form.club.long}") String name,
		@NotBlank(message = "{entries.form.town.missing}") @Size(max = 120,
				message = "{entries.form.town.long}") String town,
		@Nullable Integer version) {

	static ClubForm of(KnownClub known) {
		return new ClubForm(known.club().name(), known.club().town(), known.version());
	}

	ChangeClub order(ClubId club) {
		return new ChangeClub(club, (this.version != null) ? this.version : -1, this.name, this.town);
	}

}
