package rimebook.timetable.web;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Required;
import rimebook.timetable.PlanView;
import rimebook.timetable.plan.PlanRules;

/**
 * What times are made from, as typed: what belongs to a team in seconds, the rest in
 * minutes.
 */
record RulesForm(int seen, PlanRules.@Nullable WarmUp warmUp, @Nullable Integer warmUpSeconds,
		@Nullable Integer entering, @Nullable Integer leaving, @Nullable Integer markingPlacement,
		@Nullable Integer markingPoints, @Nullable Integer resurfaceAfter, @Nullable Integer resurfacing,
		boolean byItself, @Nullable Integer rest, @Nullable Integer changing, @Nullable Integer musicDesks) {

	private static final int HOUR = 3600;

	static RulesForm of(PlanView view) {
		PlanRules rules = view.plan().rules();
		return new RulesForm(view.number(), rules.team().warmUp(), rules.team().warmUpSeconds(),
				rules.team().entering(), rules.team().leaving(), rules.team().markingPlacement(),
				rules.team().markingPoints(), rules.ice().after() / 60, rules.ice().takes() / 60,
				rules.ice().byItself(), rules.care().rest() / 60, rules.care().changing() / 60,
				rules.care().musicDesks());
	}

	PlanRules rules() {
		PlanRules.TeamTime team = new PlanRules.TeamTime(
				(this.warmUp != null) ? this.warmUp : PlanRules.USUAL.team().warmUp(),
				number("warmUpSeconds", this.warmUpSeconds, 0, HOUR), number("entering", this.entering, 0, HOUR),
				number("leaving", this.leaving, 0, HOUR), number("markingPlacement", this.markingPlacement, 0, HOUR),
				number("markingPoints", this.markingPoints, 0, HOUR));
		PlanRules.IceCare ice = new PlanRules.IceCare(60 * number("resurfaceAfter", this.resurfaceAfter, 10, 600),
				60 * number("resurfacing", this.resurfacing, 1, 60), this.byItself);
		return new PlanRules(team, ice, new PlanRules.Distances(60 * number("rest", this.rest, 0, 1440),
				60 * number("changing", this.changing, 0, 240), number("musicDesks", this.musicDesks, 1, 6)));
	}

	private static int number(String field, @Nullable Integer typed, int least, int most) {
		return Required.number(field, (typed != null) ? typed : least - 1, least, most);
	}

}
