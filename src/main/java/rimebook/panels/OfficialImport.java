package rimebook.panels;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.tables.TableColumns;
import rimebook.tables.TableFile;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** Officials for the register from a file, looked over before anything is written. */
@Service
@Transactional(readOnly = true)
public class OfficialImport {

	private static final TableColumns COLUMNS = new TableColumns(List.of("name", "club", "qualification"), 1,
			Map.of("name", List.of("official", "official_name", "full_name", "judge"), "club",
					List.of("club_name", "organisation", "organization"), "qualification",
					List.of("qualifications", "level", "grade", "licence", "license")));

	private final OfficialRegister register;

	OfficialImport(OfficialRegister register) {
		this.register = register;
	}

	/**
	 * Look a file over without writing anything.
	 * @throws RuleViolationException with a code {@code import-…} if the file cannot be
	 * read as a whole; what is wrong with single rows stands in the preview
	 */
	public Preview preview(String csv) {
		TableFile file = TableFile.read(csv, COLUMNS);
		OfficialRowCheck check = check();
		return new Preview(file.rows().stream().map(check::check).toList(), file.columnsLeftOut());
	}

	/**
	 * Register everybody in the file who is not known, but those set aside, all or none.
	 * @param linesSetAside the lines of the rows to leave out
	 * @return how many were added
	 * @throws RuleViolationException {@code import-rows-bad} if a row that is not set
	 * aside is bad; else as for {@link #preview}
	 */
	@Transactional
	public int apply(String csv, Set<Integer> linesSetAside, Actor actor) {
		OfficialRowCheck check = check();
		List<Row> rows = TableFile.read(csv, COLUMNS)
			.rows()
			.stream()
			.filter((row) -> !linesSetAside.contains(row.line()))
			.map(check::check)
			.toList();
		checkRows(rows);
		List<Row> added = rows.stream().filter(Row::isNew).toList();
		added
			.forEach((row) -> this.register.add(new DraftOfficial(row.name(), row.club(), row.qualification()), actor));
		return added.size();
	}

	private OfficialRowCheck check() {
		return new OfficialRowCheck(this.register.all().stream().map(Official::view).toList());
	}

	private static void checkRows(List<Row> rows) {
		Sentence bad = Series
			.withCommas(rows.stream().filter((row) -> !row.problems().isEmpty()).map((row) -> row.line()).toList());
		if (!bad.isEmpty()) {
			throw TableFile.refusal("import-rows-bad", Sentence.of("panels.import.rows-bad", bad));
		}
	}

	/**
	 * One row of a file of officials as it was read.
	 *
	 * @param line the line on which the row begins, from 1, the header counted
	 * @param known whether the register has the official and nothing here contradicts it,
	 * so that nothing is to do
	 * @param problems what is wrong with it; empty when it can be registered
	 */
	public record Row(int line, String name, String club, String qualification, boolean known,
			List<Sentence> problems) {

		public Row {
			problems = List.copyOf(problems);
		}

		/** Tell whether the row would add somebody to the register. */
		public boolean isNew() {
			return !this.known && this.problems.isEmpty();
		}

	}

	/**
	 * What a file of officials would do if it were accepted now. Nothing has been
	 * written.
	 *
	 * @param rows every row of the file, in its order
	 * @param columnsLeftOut names of columns in the file that have no meaning here
	 */
	public record Preview(List<OfficialImport.Row> rows, List<String> columnsLeftOut) {

		public Preview {
			rows = List.copyOf(rows);
			columnsLeftOut = List.copyOf(columnsLeftOut);
		}

		/** The rows that add somebody. */
		public List<OfficialImport.Row> added() {
			return this.rows.stream().filter(OfficialImport.Row::isNew).toList();
		}

		/** The rows that have to be mended or set aside. */
		public List<OfficialImport.Row> bad() {
			return this.rows.stream().filter((row) -> !row.problems().isEmpty()).toList();
		}

		/** How many rows say what the register says already. */
		public long known() {
			return this.rows.stream().filter(OfficialImport.Row::known).count();
		}

	}

}
