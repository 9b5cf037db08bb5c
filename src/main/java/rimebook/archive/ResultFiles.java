package rimebook.archive;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

import rimebook.published.Standing;
import rimebook.tabulation.Hundredths;

/**
 * What follows from the data and the program alone: the newest results once more for
 * readers, as tables and a page, and the words that every archive has.
 */
final class ResultFiles {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private ResultFiles() {
	}

	static void of(Standings standings, Variant variant, Files zip) throws IOException {
		List<Standings.Shown> newest = standings.newest();
		Table places = new Table("event", "segment", "version", "state", "place", "shared", "team", "club",
				"start_number", "status", "total", "why");
		Table marks = new Table("event", "segment", "team", "judge", "first", "second", "ordinal");
		Table points = new Table("event", "segment", "team", "kind", "item", "name", "judge", "given", "use", "points");
		newest.forEach((shown) -> shown.standing().rows().forEach((row) -> {
			places(shown, row, places);
			marks(shown, row, marks);
			points(shown, row, points);
		}));
		places.write("results/places", zip);
		marks.write("results/marks", zip);
		points.write("results/points", zip);
		zip.add("index.html", ResultsPage.of(standings, newest));
		zip.add("README.txt", ArchiveTexts.readme(variant));
		zip.add("verify.py", ArchiveTexts.python());
	}

	private static void places(Standings.Shown shown, Standing.Row row, Table table) {
		Integer total = row.total();
		table.add(shown.event(), shown.segment(), shown.version().number(), shown.version().state(), row.place(),
				row.shared(), row.team(), row.club(), row.startNumber(), row.status(),
				(total != null) ? Hundredths.plain(total) : null, row.why().english());
	}

	private static void marks(Standings.Shown shown, Standing.Row row, Table table) {
		List<Integer> judges = shown.standing().judgeNumbers();
		for (int i = 0; i < row.cards().size(); i++) {
			Standing.Card card = row.cards().get(i);
			table.add(shown.event(), shown.segment(), row.team(), judges.get(i), Hundredths.plain(card.first()),
					Hundredths.plain(card.second()), card.ordinal());
		}
	}

	private static void points(Standings.Shown shown, Standing.Row row, Table table) {
		Standing.Score score = row.score();
		if (score == null) {
			return;
		}
		Line line = new Line(shown, row.team(), table);
		score.elementLines().forEach((element) -> {
			line.marks("element", element.number() + " " + element.code(), element.name(), element.grades(), 1);
			line.of("element", element.number() + " " + element.code(), element.name(), element.score());
		});
		score.componentLines().forEach((component) -> {
			line.marks("component", component.name(), component.name(), component.marks(), Hundredths.ONE);
			line.of("component", component.name(), component.name(), component.points());
		});
		score.deductionLines()
			.forEach((deduction) -> line.of("deduction", deduction.item(), deduction.name(), -deduction.points()));
		line.of("total", "", "", score.total());
	}

	/** Lines about one team. */
	private record Line(Standings.Shown shown, String team, Table table) {

		void of(String kind, String item, String name, int points) {
			this.table.add(this.shown.event(), this.shown.segment(), this.team, kind, item, name, null, null, null,
					Hundredths.plain(points));
		}

		/**
		 * What each judge gave.
		 * @param unit 100 where it is in hundredths
		 */
		void marks(String kind, String item, String name, List<Standing.Score.Mark> marks, int unit) {
			List<Integer> judges = this.shown.standing().judgeNumbers();
			for (int i = 0; i < marks.size(); i++) {
				Integer given = marks.get(i).given();
				this.table.add(this.shown.event(), this.shown.segment(), this.team, kind, item, name, judges.get(i),
						(given == null || unit == 1) ? given : Hundredths.plain(given), marks.get(i).use(), null);
			}
		}

	}

	/** Takes the files. */
	interface Files {

		void add(String name, String content) throws IOException;

	}

	/** A table as CSV and as JSON. */
	private static final class Table {

		private final List<String> columns;

		private final List<List<@Nullable Object>> rows = new ArrayList<>();

		Table(String... columns) {
			this.columns = List.of(columns);
		}

		void add(@Nullable Object... cells) {
			this.rows.add(Arrays.asList(cells));
		}

		void write(String name, Files zip) throws IOException {
			StringBuilder csv = new StringBuilder(CsvLine.of(this.columns));
			List<String> json = new ArrayList<>();
			for (List<@Nullable Object> row : this.rows) {
				csv.append(CsvLine.of(row));
				Map<String, @Nullable Object> members = new LinkedHashMap<>();
				for (int i = 0; i < row.size(); i++) {
					members.put(this.columns.get(i), row.get(i));
				}
				json.add(JSON.writeValueAsString(members));
			}
			zip.add(name + ".csv", csv.toString());
			zip.add(name + ".json", "[\n" + String.join(",\n", json) + "\n]\n");
		}

	}

}
