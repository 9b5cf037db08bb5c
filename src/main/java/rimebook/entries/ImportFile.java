package rimebook.entries;

import java.util.List;
import java.util.Map;

import rimebook.shared.RuleViolationException;
import rimebook.tables.TableColumns;
import rimebook.tables.TableFile;
import rimebook.wording.Sentence;

/** Reads a file of entries. */
final class ImportFile {

	static final TableColumns COLUMNS = new TableColumns(List.of("event", "club", "town", "team", "spoken_as"), 4,
			Map.of("event", List.of("category", "level", "division"), "club",
					List.of("club_name", "organisation", "organization"), "town", List.of("city", "place", "home_town"),
					"team", List.of("team_name"), "spoken_as",
					List.of("spoken_name", "pronunciation", "announced_as")));

	private final TableFile table;

	private ImportFile(TableFile table) {
		this.table = table;
	}

	/**
	 * Read a file.
	 * @throws RuleViolationException with a code {@code import-…} if it cannot be read as
	 * a whole
	 */
	static ImportFile read(String text) {
		return new ImportFile(TableFile.read(text, COLUMNS));
	}

	List<EntryImport.Row> rows() {
		return this.table.rows().stream().map(this::row).toList();
	}

	/** Names of columns that have no meaning here. */
	List<String> columnsLeftOut() {
		return this.table.columnsLeftOut();
	}

	private EntryImport.Row row(TableFile.Row row) {
		List<EntryImport.Problem> problems = row.fits() ? List.of()
				: List.of(new EntryImport.Problem("row", Sentence.of("entries.import.row-columns", row.columns()),
						Sentence.of("entries.import.header-columns", this.table.width())));
		return new EntryImport.Row(row.line(), row.value("event"), new EntryImport.Row.Names(row.value("club"),
				row.value("town"), row.value("team"), row.value("spoken_as")), problems);
	}

	static RuleViolationException refusal(String code, Sentence sentence) {
		return TableFile.refusal(code, sentence);
	}

}
