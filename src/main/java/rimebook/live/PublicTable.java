package rimebook.live;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

import rimebook.live.pictures.Course;
import rimebook.live.pictures.Differences;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.shared.SpreadsheetCell;
import rimebook.tabulation.Hundredths;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.plan.Programmed;

/**
 * A table of a public page as CSV (RFC 4180, UTF-8): one heading, one line a row, what is
 * not there is empty, times in UTC. Segments' standings are {@link StandingCsv}.
 */
final class PublicTable {

	private final List<List<String>> lines = new ArrayList<>();

	private PublicTable(Collection<String> heading) {
		this.lines.add(List.copyOf(heading));
	}

	private static PublicTable of(String... heading) {
		return new PublicTable(List.of(heading));
	}

	/** The combined standing of an event: a place a segment, then the total. */
	static PublicTable ofEvent(@Nullable ResultVersion version) {
		List<String> heading = new ArrayList<>(List.of("place", "team", "club", "status"));
		if (version == null) {
			return new PublicTable(heading);
		}
		Standing standing = version.standing();
		boolean points = standing.isByPoints();
		standing.segments().forEach((segment) -> {
			heading.add(segment.name() + " place");
			if (points) {
				heading.add(segment.name() + " points");
			}
		});
		heading.addAll(List.of("total", "why"));
		PublicTable table = new PublicTable(heading);
		for (Standing.Row row : standing.rows()) {
			List<String> line = new ArrayList<>(List.of(text(row.place()), row.team(), row.club(), word(row.status())));
			for (int i = 0; i < standing.segments().size(); i++) {
				line.add(text(at(row.segmentPlaces(), i)));
				if (points) {
					line.add(points(at(row.segmentTotals(), i)));
				}
			}
			line.add((row.total() == null) ? "" : points ? points(row.total()) : Hundredths.decimal(row.total()));
			line.add(row.why().english());
			table.lines.add(line);
		}
		return table;
	}

	/** A starting order with the tickets of its draw. */
	static PublicTable ofOrder(Collection<Start> starts) {
		PublicTable table = of("number", "group", "team", "club", "status", "ticket", "digested");
		starts.forEach((start) -> table.add(text(start.number()), text(start.group()), start.team(), start.club(),
				word(start.mark().name()), start.ticket(), start.digested()));
		return table;
	}

	/** The places of each team after each team. */
	static PublicTable ofCourse(Course course) {
		List<String> heading = new ArrayList<>(List.of("team"));
		course.steps().forEach((step) -> heading.add("after " + step));
		PublicTable table = new PublicTable(heading);
		course.lines().forEach((line) -> {
			List<String> cells = new ArrayList<>(List.of(line.row().team()));
			line.places().forEach((place) -> cells.add(text(place)));
			table.lines.add(cells);
		});
		return table;
	}

	/** The places that teams can still get. */
	static PublicTable ofChances(@Nullable ResultVersion version) {
		PublicTable table = of("team", "marked", "segment_best", "segment_worst", "segment_exact", "event_best",
				"event_worst", "event_exact");
		Standing.Outlook outlook = (version != null) ? version.standing().outlook() : null;
		if (outlook != null) {
			outlook.chances().forEach((chance) -> {
				List<String> line = new ArrayList<>(List.of(chance.team(), String.valueOf(chance.marked())));
				line.addAll(range(chance.segment()));
				line.addAll(range(chance.event()));
				table.lines.add(line);
			});
		}
		return table;
	}

	private static List<String> range(Standing.Outlook.@Nullable Range range) {
		return (range == null) ? List.of("", "", "")
				: List.of(text(range.best()), text(range.worst()), String.valueOf(range.exact()));
	}

	/**
	 * Two teams beside each other: the figures that are compared, then, in points
	 * judging, where their points differ.
	 */
	static PublicTable ofPair(Beside pair) {
		Standing.Row one = pair.one().row();
		Standing.Row other = pair.other().row();
		PublicTable table = of("what", "detail", one.team(), other.team(), "difference", "decides");
		table.add("place", "", text(one.place()), text(other.place()), "", "");
		for (Beside.Step step : pair.steps()) {
			table.add("figure", step.own().code(), step.own().value(), step.theirs().value(),
					Hundredths.decimal(step.own().hundredths() - step.theirs().hundredths()),
					String.valueOf(step.decides()));
		}
		Differences differences = pair.differences();
		if (differences != null) {
			differences.lines()
				.forEach((line) -> table.add(word(line.kind().name()), detail(line), points(line.own()),
						points(line.theirs()), points(line.difference()), ""));
		}
		return table;
	}

	private static String detail(Differences.Line line) {
		return switch (line.kind()) {
			case ELEMENT -> line.number() + " " + line.one() + " / " + line.other();
			case COMPONENT -> line.one();
			case DEDUCTIONS -> "";
		};
	}

	/** The versions of a segment. */
	static PublicTable ofVersions(Collection<ResultVersion> versions) {
		PublicTable table = of("version", "state", "cause", "note", "published_at", "skated", "starters",
				"fingerprint");
		versions.forEach((version) -> table.add(text(version.number()), word(version.state().name()),
				word(version.cause().name()), PublicNote.of(version).english(), version.publishedAt().toString(),
				text(version.standing().skated()), text(version.standing().starters()), version.fingerprint()));
		return table;
	}

	/** The teams of a competition. */
	static PublicTable ofTeams(Collection<Feed.TeamItem> teams) {
		PublicTable table = of("event", "team", "club", "entered", "entry");
		teams.forEach((team) -> table.add(team.event(), team.team(), team.club(), String.valueOf(team.entered()),
				team.entry()));
		return table;
	}

	/** The timetable in force: a line an item, and one a team of it. */
	static PublicTable ofTimetable(TimetableDay.Day now) {
		PublicTable table = of("day", "ice", "kind", "title", "event", "segment", "number", "team", "begins", "ends",
				"expected", "minutes_late", "state");
		for (Programmed.Day day : now.version().timetable().days()) {
			for (Programmed.Ice ice : day.ice()) {
				for (Programmed.Item item : ice.items()) {
					table.add(List.of(day.day().toString(), ice.surface()), TimetablePage.ItemRow.of(item, now));
				}
			}
		}
		return table;
	}

	private void add(List<String> where, TimetablePage.ItemRow row) {
		TimetableFeed.ItemBody item = TimetableFeed.ItemBody.of(row);
		List<String> what = List.of(word(item.kind()), item.title(), text(item.event()), text(item.segment()));
		this.lines.add(joined(where, what, List.of("", "", item.begins().toString(), item.ends().toString()),
				expected(item.expected()), List.of("")));
		for (TimetableFeed.TeamTimeBody team : item.teams()) {
			this.lines.add(joined(where, what, List.of(text(team.number()), team.team(), team.begins().toString(), ""),
					expected(team.expected()), List.of(word(text(team.state())))));
		}
	}

	private static List<String> expected(TimetableFeed.@Nullable ExpectedBody expected) {
		return (expected == null) ? List.of("", "") : List.of(seconds(expected.at()), text(expected.minutesLate()));
	}

	private static String seconds(Instant at) {
		return Instant.ofEpochSecond(at.getEpochSecond()).toString();
	}

	@SafeVarargs
	private static List<String> joined(List<String>... parts) {
		List<String> line = new ArrayList<>();
		for (List<String> part : parts) {
			line.addAll(part);
		}
		return line;
	}

	private void add(String... cells) {
		this.lines.add(List.of(cells));
	}

	private static String text(@Nullable Object value) {
		return (value != null) ? value.toString() : "";
	}

	private static String points(@Nullable Integer hundredths) {
		return (hundredths != null) ? Feed.points(hundredths).toPlainString() : "";
	}

	private static String word(String name) {
		return name.toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static <T> @Nullable T at(@Nullable List<@Nullable T> list, int index) {
		return (list != null && index < list.size()) ? list.get(index) : null;
	}

	/**
	 * The table as text; a cell that a spreadsheet would take for a formula is guarded.
	 */
	String csv() {
		StringBuilder text = new StringBuilder();
		try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
			for (List<String> line : this.lines) {
				csv.printRecord(line.stream().map(SpreadsheetCell::of));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return text.toString();
	}

}
