package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.PointsNeeded;
import rimebook.tabulation.possible.PossiblePlaces;
import rimebook.tabulation.possible.PossibleWords;

/** Lays out what is still possible in columns. */
final class PossibleTables {

	private static final UnaryOperator<String> NAMES = UnaryOperator.identity();

	private PossibleTables() {
	}

	static Table places(PossiblePlaces possible, SegmentRequest.UnderWay begun) {
		List<List<String>> rows = new ArrayList<>();
		for (PossiblePlaces.Outlook team : possible.teams()) {
			rows.add(row(team.entry(), "segment", team.segment(), PossibleWords.inSegment(team, NAMES).english()));
			Optional.ofNullable(team.event())
				.ifPresent((range) -> rows
					.add(row(team.entry(), "event", range, PossibleWords.inEvent(team, NAMES).english())));
		}
		return new Table(
				"Still possible, " + begun.standing().rows().size() + " marked, " + begun.toSkate().size()
						+ " to skate",
				List.of("entry", "scope", "best", "worst", "certainty", "why"),
				List.of("Entry", "In the", "Best", "Worst", "Certainty", "Why"), rows);
	}

	private static List<String> row(String entry, String scope, PossiblePlaces.PlaceRange range, String why) {
		return List.of(entry, scope, String.valueOf(range.best()), String.valueOf(range.worst()), certainty(range),
				why);
	}

	private static String certainty(PossiblePlaces.PlaceRange range) {
		if (range.isExact()) {
			return "exact";
		}
		if (range.bestExact()) {
			return "worst is a bound";
		}
		return range.worstExact() ? "best is a bound" : "bounds";
	}

	static Table needs(PossiblePlaces possible, int places) {
		return new Table("Needed in this segment",
				List.of("entry", "event_place", "certain_with", "possible_with", "certainty", "why"),
				List.of("Entry", "For place", "Certain with", "Possible with", "Certainty", "Why"),
				possible.needs()
					.stream()
					.filter((need) -> need.place() <= places)
					.map((need) -> List.of(need.entry(), String.valueOf(need.place()), finish(need.certain().finish()),
							finish(need.possible().finish()), certainty(need),
							PossibleWords.need(need, possible.isOfEvent(), NAMES).english()))
					.toList());
	}

	private static String finish(PossiblePlaces.PlaceNeed.@Nullable SegmentFinish finish) {
		return (finish == null) ? "" : finish.place() + (finish.shared() ? "" : " alone");
	}

	private static String certainty(PossiblePlaces.PlaceNeed need) {
		if (need.certain().exact() && need.possible().exact()) {
			return "exact";
		}
		if (need.certain().exact()) {
			return "possible is a bound";
		}
		return need.possible().exact() ? "certain is a bound" : "bounds";
	}

	static Table needed(List<PointsNeeded.ScoreNeeded> needed) {
		return new Table("Needed against those who have skated", List.of("place", "total", "why"),
				List.of("Place", "Total", "Why"),
				needed.stream()
					.map((need) -> List.of(String.valueOf(need.place()), need.total().toString(),
							need.words().english()))
					.toList());
	}

}
