package rimebook.live;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.timetable.plan.Estimate;
import rimebook.timetable.plan.Programmed;

/** What is still to come of the day that a timetable shows, line by line. */
final class BoardTimetable {

	private BoardTimetable() {
	}

	static List<Row> rows(TimetablePage page) {
		List<Row> rows = new ArrayList<>();
		boolean several = page.ice().size() > 1;
		for (TimetablePage.IceRows ice : page.ice()) {
			String surface = several ? ice.surface() : "";
			for (TimetablePage.ItemRow item : ice.items()) {
				List<TimetablePage.TeamRow> teams = item.teams()
					.stream()
					.filter(TimetablePage.TeamRow::isToCome)
					.toList();
				if (item.item().isSkated() ? !teams.isEmpty() : isToCome(item, page.now().at())) {
					rows.add(new Row(surface, item.item(), null, item.item().begins(), item.expected()));
				}
				teams.forEach(
						(team) -> rows.add(new Row(surface, item.item(), team, team.line().begins(), team.expected())));
			}
		}
		return rows;
	}

	private static boolean isToCome(TimetablePage.ItemRow row, Instant now) {
		return !row.cancelled() && row.item().ends().isAfter(now);
	}

	/**
	 * A line.
	 *
	 * @param surface the ice, empty where there is but one
	 * @param team the team, {@code null} for the item as a whole
	 * @param begins as it was published
	 * @param expected when it is expected, {@code null} where nothing more is to be said
	 */
	record Row(String surface, Programmed.Item item, TimetablePage.@Nullable TeamRow team, Instant begins,
			Estimate.@Nullable Expected expected) {
	}

}
