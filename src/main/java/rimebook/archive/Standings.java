package rimebook.archive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.published.StandingText;

/**
 * The published versions of an archive's competition with what they are about.
 *
 * @param competition its row
 * @param events in order
 */
record Standings(TableRow competition, List<OfEvent> events) {

	private static final StandingText READER = new StandingText();

	Standings {
		events = List.copyOf(events);
	}

	static Standings of(Rows rows, Texts texts) {
		Map<String, List<Version>> versions = new HashMap<>();
		for (TableRow row : rows.of("result_version")) {
			versions.computeIfAbsent(text(row, "scope_id"), (scope) -> new ArrayList<>())
				.add(new Version(row, text(row, "body"), texts));
		}
		versions.values().forEach((some) -> some.sort(Comparator.comparing(Version::number)));
		return new Standings(rows.of("competition").get(0),
				byPosition(rows.of("event")).stream()
					.map((event) -> new OfEvent(event, versions(versions, event),
							byPosition(rows.of("segment")).stream()
								.filter((segment) -> text(segment, "event_id").equals(text(event, "id")))
								.map((segment) -> new OfSegment(segment, versions(versions, segment)))
								.toList()))
					.toList());
	}

	private static List<Version> versions(Map<String, List<Version>> versions, TableRow scope) {
		return versions.getOrDefault(text(scope, "id"), List.of());
	}

	private static List<TableRow> byPosition(List<TableRow> rows) {
		return rows.stream()
			.sorted(Comparator.comparing((TableRow row) -> Integer.valueOf(text(row, "position"))))
			.toList();
	}

	static String text(TableRow row, String column) {
		return Objects.requireNonNull(row.get(column), column).toString();
	}

	/** The newest version of each, the event before its segments. */
	List<Shown> newest() {
		List<Shown> newest = new ArrayList<>();
		for (OfEvent event : this.events) {
			add(newest, event.row(), null, event.versions());
			event.segments().forEach((segment) -> add(newest, event.row(), segment.row(), segment.versions()));
		}
		return newest;
	}

	private static void add(List<Shown> newest, TableRow event, @Nullable TableRow segment, List<Version> versions) {
		if (!versions.isEmpty()) {
			Version last = versions.get(versions.size() - 1);
			newest.add(new Shown(text(event, "slug"), (segment != null) ? text(segment, "slug") : "", last,
					last.standing()));
		}
	}

	/** The rows of a table by its name. */
	interface Rows {

		List<TableRow> of(String table);

	}

	/** The text of a file inside by its name. */
	interface Texts {

		String of(String file);

	}

	/** An event with its versions, oldest first. */
	record OfEvent(TableRow row, List<Version> versions, List<OfSegment> segments) {
	}

	/** A segment with its versions, oldest first. */
	record OfSegment(TableRow row, List<Version> versions) {

		@Nullable Standing newest() {
			return this.versions.isEmpty() ? null : this.versions.get(this.versions.size() - 1).standing();
		}

	}

	/** A published version: its row, the file of its body, and where that is read. */
	record Version(TableRow row, String file, Texts texts) {

		/** What it says; read each time, since all at once would be many. */
		Standing standing() {
			return READER.read(this.texts.of(this.file));
		}

		int number() {
			return Integer.parseInt(text(this.row, "number"));
		}

		String state() {
			return text(this.row, "state");
		}

		/** How a fault names it. */
		String words(Standing standing) {
			String segment = standing.segment().isEmpty() ? "" : ", " + standing.segment();
			return standing.event() + segment + ", version " + number();
		}

	}

	/** The newest version of an event, or of a segment where that is not empty. */
	record Shown(String event, String segment, Version version, Standing standing) {

		String anchor() {
			return this.segment.isEmpty() ? this.event : this.event + "-" + this.segment;
		}

	}

}
