package rimebook.timetable.web;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

import rimebook.timetable.PlanView;
import rimebook.timetable.plan.BlockName;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Warning;
import rimebook.wording.Sentence;

/**
 * One surface on one day, as the page of the plan shows it.
 *
 * @param key how forms name it
 */
record PlannedSheet(String key, String day, String surface, Laid.LaidSheet laid, List<Row> rows) {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);

	static List<PlannedSheet> of(PlanView view) {
		Map<UUID, Programme.Segment> segments = view.programme().byId();
		return view.laid()
			.sheets()
			.stream()
			.map((sheet) -> new PlannedSheet(SheetKey.of(sheet.sheet().place()), day(sheet.sheet().place().day()),
					view.plan().surface(sheet.sheet().place().surface()), sheet,
					sheet.blocks().stream().map((laid) -> row(laid, segments, view)).toList()))
			.toList();
	}

	static String day(LocalDate day) {
		return DAY.format(day);
	}

	private static Row row(Laid.LaidBlock laid, Map<UUID, Programme.Segment> segments, PlanView view) {
		Programme.Segment segment = (laid.block().segment() != null) ? segments.get(laid.block().segment()) : null;
		return new Row(laid, BlockName.of(laid.block(), segments), segment != null && !segment.drawn(),
				view.laid()
					.warnings()
					.stream()
					.filter((warning) -> Objects.equals(warning.block(), laid.block().id()))
					.map(Warning::why)
					.toList());
	}

	/**
	 * A block.
	 *
	 * @param undrawn whether its teams stand in the order of their entry
	 */
	record Row(Laid.LaidBlock laid, Sentence name, boolean undrawn, List<Sentence> warnings) {
	}

}
