package rimebook.cli;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.EventStanding;
import rimebook.tabulation.Figures;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentStanding;

/** Lays standings out in columns. */
final class StandingTables {

	private static final Table MAJORITY = new Table("Majority",
			List.of("place", "entry", "majority_place", "size_of_majority", "total_of_majority", "total_ordinals",
					"why"),
			List.of("Place", "Entry", "Majority place", "Judges", "Total of majority", "Total of ordinals", "Why"),
			List.of());

	private static final Table ONE_BY_ONE = new Table("One by one",
			List.of("place", "entry", "wins", "in_favour", "why"),
			List.of("Place", "Entry", "Wins", "Judges in favour", "Why"), List.of());

	private static final Table EVENT = new Table("Factored places", List.of("place", "entry", "total", "why"),
			List.of("Place", "Entry", "Total", "Why"), List.of());

	private StandingTables() {
	}

	static Table of(SegmentStanding standing) {
		Table layout = (standing.method() == PlacementRules.PlacementMethod.MAJORITY) ? MAJORITY : ONE_BY_ONE;
		String title = layout.title() + ", " + count(standing.judges(), "judge") + ", "
				+ entries(standing.rows().size());
		return new Table(title, layout.columns(), layout.labels(),
				standing.rows().stream().map(StandingTables::row).toList());
	}

	private static List<String> row(PlacedEntry row) {
		Figures figures = Objects.requireNonNull(row.figures());
		if (figures instanceof Figures.MajorityFigures majority) {
			return List.of(place(row.place()), row.entry(), Hundredths.plain(majority.majorityPlace()),
					String.valueOf(majority.size()), Hundredths.plain(majority.totalOfMajority()),
					Hundredths.plain(majority.totalOrdinals()), row.why().english());
		}
		Figures.OneByOneFigures oneByOne = (Figures.OneByOneFigures) figures;
		return List.of(place(row.place()), row.entry(), Hundredths.plain(oneByOne.wins()),
				String.valueOf(oneByOne.judgesInFavour()), row.why().english());
	}

	static Table of(EventStanding standing) {
		String factors = String.join(" + ", standing.factors().stream().map(Hundredths::decimal).toList());
		return new Table(EVENT.title() + ", factors " + factors + ", " + entries(standing.rows().size()),
				EVENT.columns(), EVENT.labels(), standing.rows().stream().map(StandingTables::row).toList());
	}

	/** A total is comparable only where every segment is in it. */
	private static List<String> row(EventStanding.EventRow row) {
		return List.of(place(row.place()), row.entry(), row.complete() ? Hundredths.decimal(row.total()) : "",
				row.why().english());
	}

	private static String place(@Nullable Integer place) {
		return (place != null) ? place.toString() : "";
	}

	static String entries(int count) {
		return count + ((count == 1) ? " entry" : " entries");
	}

	static String count(int count, String noun) {
		return count + " " + noun + ((count == 1) ? "" : "s");
	}

}
