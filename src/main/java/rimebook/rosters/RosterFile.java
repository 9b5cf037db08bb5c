package rimebook.rosters;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import rimebook.entries.EntryView;
import rimebook.shared.SpreadsheetCell;
import rimebook.tables.TableColumns;
import rimebook.tables.TableFile;

/**
 * Rosters as a table: what its columns are called, and how a day and a part are written.
 */
final class RosterFile {

	/** Three thousand skaters and as many again. */
	static final int MOST_ROWS = 6000;

	static final TableColumns COLUMNS = new TableColumns(
			List.of("event", "team", "given_name", "family_name", "birth_date", "membership_number", "part", "club",
					"member_of"),
			4,
			Map.of("event", List.of("category", "level", "division"), "team", List.of("team_name"), "given_name",
					List.of("first_name", "forename"), "family_name", List.of("last_name", "surname", "name"),
					"birth_date", List.of("born", "date_of_birth", "birthdate", "birthday"), "membership_number",
					List.of("membership", "number", "licence", "license", "member_number"), "part",
					List.of("role", "alternate"), "club", List.of("club_of_the_team", "team_club"), "member_of",
					List.of("home_club", "skater_club")));

	private static final List<DateTimeFormatter> DAYS = Stream.of("uuuu-M-d", "d.M.uuuu", "uuuu/M/d")
		.map((form) -> DateTimeFormatter.ofPattern(form, Locale.ROOT).withResolverStyle(ResolverStyle.STRICT))
		.toList();

	private static final Map<String, PlaceRole> PARTS = Map.of("", PlaceRole.SKATES, "skates", PlaceRole.SKATES,
			"skater", PlaceRole.SKATES, "no", PlaceRole.SKATES, "alternate", PlaceRole.ALTERNATE, "substitute",
			PlaceRole.ALTERNATE, "reserve", PlaceRole.ALTERNATE, "yes", PlaceRole.ALTERNATE);

	private final StringBuilder text = new StringBuilder();

	private final CSVPrinter printer;

	/** An empty table to write. */
	RosterFile() {
		try {
			this.printer = new CSVPrinter(this.text, CSVFormat.DEFAULT);
			this.printer.printRecord(COLUMNS.names());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/**
	 * Read a table.
	 * @throws rimebook.shared.RuleViolationException with a code {@code import-…} if it
	 * cannot be read as a whole
	 */
	static TableFile read(String text) {
		return TableFile.read(text, COLUMNS, MOST_ROWS);
	}

	/**
	 * The day that is written; empty for what is none. A day before a month, with dots.
	 */
	static Optional<LocalDate> day(String written) {
		for (DateTimeFormatter form : DAYS) {
			try {
				return Optional.of(LocalDate.parse(written, form));
			}
			catch (DateTimeException ex) {
				// It may be written in the next form.
			}
		}
		return Optional.empty();
	}

	/** The part that is written; empty for what is none. */
	static Optional<PlaceRole> part(String written) {
		return Optional.ofNullable(PARTS.get(written.toLowerCase(Locale.ROOT)));
	}

	void add(String event, EntryView entry, RosterView.Place place, String memberOf) {
		SkaterView.Facts facts = place.skater().facts();
		try {
			this.printer.printRecord(Stream.of(event, entry.team().name(), facts.givenName(), facts.familyName(),
					(facts.birthDate() != null) ? facts.birthDate().toString() : "", facts.membershipNumber(),
					(place.role() == PlaceRole.ALTERNATE) ? "alternate" : "skates", entry.team().club().name(),
					memberOf)
				.map(SpreadsheetCell::of));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@Override
	public String toString() {
		return this.text.toString();
	}

}
