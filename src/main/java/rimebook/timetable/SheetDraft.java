package rimebook.timetable;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import rimebook.competition.DraftCompetition;
import rimebook.shared.FoldedName;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.Sheet;
import rimebook.wording.Sentence;

/**
 * When the ice of a surface can be used on a day, as somebody wants it.
 *
 * @param surface its name, up to 60 characters; a new one becomes a further surface
 * @param resurfacings at which times it is resurfaced whatever is on; twelve at most
 * @throws RuleViolationException naming the field that does not fit
 */
public record SheetDraft(LocalDate day, String surface, LocalTime begins, LocalTime closes,
		List<LocalTime> resurfacings) {

	private static final int MOST_SURFACES = 6;

	private static final int MOST_TIMES = 12;

	public SheetDraft {
		surface = Required.text("surface", surface, 60);
		Required.number("resurfacings", resurfacings.size(), 0, MOST_TIMES);
		resurfacings = List.copyOf(resurfacings);
	}

	/** The plan with it. */
	Plan into(Plan plan, DraftCompetition competition) {
		if (this.day.isBefore(competition.firstDay().minusDays(1))
				|| this.day.isAfter(competition.lastDay().plusDays(1))) {
			throw RuleViolationException.ofField("timetable-day", "day", Sentence.of("timetable.day",
					competition.firstDay().minusDays(1).toString(), competition.lastDay().plusDays(1).toString()));
		}
		List<String> names = new ArrayList<>(plan.surfaces());
		if (number(names) < 0) {
			names.add(this.surface);
			Required.number("surface", names.size(), 1, MOST_SURFACES);
		}
		return plan.called(names)
			.with(new Sheet(new Plan.Place(this.day, number(names)), this.begins, this.closes, this.resurfacings));
	}

	/** Its place in a plan that knows the surface. */
	Plan.Place place(Plan plan) {
		return new Plan.Place(this.day, number(plan.surfaces()));
	}

	private int number(List<String> names) {
		for (int at = 0; at < names.size(); at++) {
			if (FoldedName.isSame(names.get(at), this.surface)) {
				return at;
			}
		}
		return -1;
	}

}
