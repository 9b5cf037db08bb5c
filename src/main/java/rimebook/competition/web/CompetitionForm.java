package rimebook.competition.web;

import java.time.LocalDate;
import java.time.ZoneId;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

import rimebook.competition.CompetitionView;
import rimebook.competition.DraftCompetition;

/**
 * What is typed about a competition.
 *
 * @param firstDay year-month-day
 * @param lastDay year-month-day
 */
record CompetitionForm(
		@NotBlank(message = "{competition.form.name.missing}") @Size(max = 120,
				message = "{competition.form.name.long}") String name,
		@NotBlank(message = "{competition.form.place.missing}") @Size(max = 120,
				message = "{competition.form.place.long}") String place,
		@Nullable String zone, @Nullable String firstDay, @Nullable String lastDay,
		@NotBlank(message = "{competition.form.rulebook.missing}") @Size(max = 300,
				message = "{competition.form.rulebook.long}") String rulebook,
		@Nullable Integer version) {

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : 0;
	}

	/** A form for a competition that begins that day. */
	static CompetitionForm empty(LocalDate day) {
		return new CompetitionForm("", "", TimeZones.usual(), day.toString(), day.toString(), "", 0);
	}

	static CompetitionForm of(CompetitionView view) {
		return new CompetitionForm(view.name(), view.facts().place(), view.zone().getId(),
				view.facts().firstDay().toString(), view.facts().lastDay().toString(), view.facts().rulebook(),
				view.version());
	}

	/** Say beside each field what is wrong with it. */
	void check(Errors errors) {
		checkDay(this.firstDay, "firstDay", "competition.form.first-day.wrong", errors);
		checkDay(this.lastDay, "lastDay", "competition.form.last-day.wrong", errors);
		if (this.zone == null || !TimeZones.knows(this.zone)) {
			errors.rejectValue("zone", "competition.form.zone.unknown");
		}
	}

	private static void checkDay(@Nullable String day, String field, String otherwise, Errors errors) {
		if (Typed.day(day).isEmpty()) {
			errors.rejectValue(field, otherwise);
		}
	}

	DraftCompetition draft() {
		return new DraftCompetition(this.name, this.place, ZoneId.of(this.zone), Typed.day(this.firstDay).orElseThrow(),
				Typed.day(this.lastDay).orElseThrow(), this.rulebook);
	}

}
