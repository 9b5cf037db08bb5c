package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.entries.EnterTeam;
import rimebook.entries.SlipCheck;

/**
 * What is typed to enter a team.
 *
 * @param another whether the person says that club and team are none of those they are
 * near to
 */
record EntryForm(
		@NotBlank(message = "{entries.form.team.missing}") @Size(max = 120,
				message = "{entries.form.team.long}") String team,
		@NotBlank(message = "{entries.form.club.missing}") @Size(max = 120,
				message = "{entries.form.club.long}") String club,
		@NotBlank(message = "{entries.form.town.missing}") @Size(max = 120,
				message = "{entries.form.town.long}") String town,
		@Size(max = 120, message = "{entries.form.spoken.long}") @Nullable String spokenAs,
		@Size(max = 500, message = "{entries.form.late.long}") @Nullable String lateReason, @Nullable Boolean another) {

	EntryForm {
		another = Boolean.TRUE.equals(another);
	}

	@Override
	public String spokenAs() {
		return (this.spokenAs != null) ? this.spokenAs : "";
	}

	@Override
	public String lateReason() {
		return (this.lateReason != null) ? this.lateReason : "";
	}

	static EntryForm empty() {
		return new EntryForm("", "", "", "", "", false);
	}

	/** The order, asked about where a name may be a slip. */
	EnterTeam order(EventId event, SlipCheck slips) {
		EnterTeam order = new EnterTeam(event, this.club, this.town, this.team, spokenAs(), lateReason());
		if (!Boolean.TRUE.equals(this.another)) {
			slips.check(order);
		}
		return order;
	}

}
