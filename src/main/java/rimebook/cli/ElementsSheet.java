package rimebook.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.ElementValue;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.ValueTable;

/** A file with the elements of a segment and the grades of each judge. */
record ElementsSheet(CsvFile file, PanelColumns columns, EntryRows entries, ValueTable values) {

	private static final String EXPECTED = "entry,number,code,J1,...,Jn with grades; base and worth may be there too";

	private static final String BASE = "0.00 to 1000.00, or nothing where the table holds";

	/** In column {@code worth}: the element was done and earns nothing. */
	private static final String NO_VALUE = "none";

	/** The older form of the same, still read. */
	private static final String OLD_COLUMN = "info";

	private static final String OLD_NO_VALUE = "*";

	static ElementsSheet of(CsvFile file, ValueTable values) {
		PanelColumns columns = PanelColumns.of(file, List.of("number", "code", "base", "worth", OLD_COLUMN), EXPECTED);
		return new ElementsSheet(file, columns, EntryRows.of(file, columns.header().entry()), values);
	}

	/** Return the elements of one entry. */
	List<JudgedElement> elements(String entry) {
		Map<Integer, Long> lines = new HashMap<>();
		List<JudgedElement> elements = new ArrayList<>();
		for (CsvFile.Row row : this.entries.of(entry)) {
			JudgedElement element = element(row);
			Long earlier = lines.putIfAbsent(element.number(), row.line());
			if (earlier != null) {
				throw field(row, "number").refuse("is also on line " + earlier, "each element of an entry once");
			}
			elements.add(element);
		}
		return elements;
	}

	private JudgedElement element(CsvFile.Row row) {
		JudgedElement.ElementWorth worth = worth(row);
		int number = number(field(row, "number"));
		String code = code(field(row, "code"), worth);
		Points base = base(row);
		List<@Nullable Integer> grades = new ArrayList<>();
		this.columns.judges().forEach((column) -> grades.add(grade(new SheetField(this.file, row, column))));
		return new SheetField(this.file, row, this.columns.judges().get(0))
			.make(() -> new JudgedElement(number, code, worth, base, grades));
	}

	private JudgedElement.ElementWorth worth(CsvFile.Row row) {
		String worth = this.columns.optional(row, "worth");
		if (!worth.isEmpty() && !worth.equals(NO_VALUE)) {
			throw new SheetField(this.file, row, this.columns.place("worth")).refuse("is not understood",
					"'none' for an element without value, or nothing");
		}
		boolean none = worth.equals(NO_VALUE) || this.columns.optional(row, OLD_COLUMN).contains(OLD_NO_VALUE);
		return none ? JudgedElement.ElementWorth.NO_VALUE : JudgedElement.ElementWorth.COUNTS;
	}

	private SheetField field(CsvFile.Row row, String column) {
		return new SheetField(this.file, row, this.columns.required(column));
	}

	private static int number(SheetField field) {
		int number = field.text().matches("\\d{1,3}") ? Integer.parseInt(field.text()) : 0;
		if (number < 1 || number > JudgedElement.HIGHEST_NUMBER) {
			throw field.refuse("is not the number of an element",
					"a whole number from 1 to " + JudgedElement.HIGHEST_NUMBER);
		}
		return number;
	}

	private String code(SheetField field, JudgedElement.ElementWorth worth) {
		if (field.text().isEmpty()) {
			throw field.fault("the code is missing; expected it as called");
		}
		if (worth == JudgedElement.ElementWorth.COUNTS && this.values.find(field.text()).isEmpty()) {
			throw field.refuse("is not in the table of values", "a code of that table, or 'none' in column 'worth'");
		}
		return field.text();
	}

	private @Nullable Points base(CsvFile.Row row) {
		if (this.columns.optional(row, "base").isEmpty()) {
			return null;
		}
		SheetField field = new SheetField(this.file, row, this.columns.place("base"));
		Points base = field.read(Points::parse, "is not a base value", BASE);
		if (!ElementValue.isBase(base)) {
			throw field.refuse("is not a base value", BASE);
		}
		return base;
	}

	private @Nullable Integer grade(SheetField field) {
		if (field.text().isEmpty()) {
			return null;
		}
		int most = this.values.grades().most();
		int grade = field.text().matches("[+-]?\\d") ? Integer.parseInt(field.text()) : most + 1;
		if (!this.values.grades().contains(grade)) {
			throw field.refuse("is not a grade",
					"a whole number from -" + most + " to +" + most + ", or nothing where the judge gave none");
		}
		return grade;
	}

	/** Return a note where something in the column of remarks changes nothing. */
	List<String> notes() {
		List<String> notes = new ArrayList<>(this.columns.header().notes());
		List<String> ignored = this.file.rows()
			.stream()
			.map((row) -> this.columns.optional(row, OLD_COLUMN).replace(OLD_NO_VALUE, "").strip())
			.filter((info) -> !info.isEmpty())
			.distinct()
			.map((info) -> "'" + info + "'")
			.toList();
		if (!ignored.isEmpty()) {
			notes.add(this.file.name() + ": in column 'info' only '*' changes anything, not "
					+ String.join(", ", ignored));
		}
		return notes;
	}

}
