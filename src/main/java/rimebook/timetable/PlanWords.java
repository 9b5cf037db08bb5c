package rimebook.timetable;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;

import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.BlockName;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.PlanRules;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Sheet;

/** Writes what was planned for the record, which is in English. */
final class PlanWords {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

	private PlanWords() {
	}

	static String block(Plan plan, Laid.LaidBlock laid, Programme programme) {
		Block block = laid.block();
		String teams = (block.part() == null || block.part().isWhole()) ? "" : ", teams %d to %s"
			.formatted(block.part().from(), (block.part().to() != null) ? block.part().to() : "the last");
		String anchor = (block.timing().anchor() != null) ? ", anchored at " + block.timing().anchor() : "";
		String gap = (block.timing().gap() > 0) ? ", %d s after a gap".formatted(block.timing().gap()) : "";
		String aside = block.timing().aside() ? ", beside the ice" : "";
		String hands = block.hands().isEmpty() ? ""
				: ", handed over by " + block.hands().strip().replaceAll("\\R", "; ");
		return "%s%s: %s, %s, %d min%s%s%s%s".formatted(BlockName.of(block, programme.byId()).english(), teams,
				TIME.format(laid.begins().atZone(programme.zone())), plan.surface(block.place().surface()),
				laid.minutes(), anchor, gap, aside, hands);
	}

	static String sheet(Plan plan, Sheet sheet) {
		String resurfacings = sheet.resurfacings().isEmpty() ? "" : ", resurfaced at "
				+ sheet.resurfacings().stream().map(Object::toString).collect(Collectors.joining(", "));
		return "%s, %s: %s to %s%s".formatted(sheet.place().day(), plan.surface(sheet.place().surface()),
				sheet.begins(), sheet.closes(), resurfacings);
	}

	static String summary(Plan plan) {
		return "%d blocks on %d days and %d surfaces".formatted(plan.blocks().size(), plan.days().size(),
				plan.surfaces().size());
	}

	static String rules(PlanRules rules) {
		PlanRules.TeamTime team = rules.team();
		return ("warm-up %s %d s, entering %d s, leaving %d s, marks %d s or by points %d s; resurfacing after %d s "
				+ "for %d s%s; rest %d s, changing rooms %d s, music desks %d")
			.formatted(team.warmUp().name().toLowerCase(Locale.ROOT), team.warmUpSeconds(), team.entering(),
					team.leaving(), team.markingPlacement(), team.markingPoints(), rules.ice().after(),
					rules.ice().takes(), rules.ice().byItself() ? "" : " not by itself", rules.care().rest(),
					rules.care().changing(), rules.care().musicDesks());
	}

}
