package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import rimebook.tabulation.TabulationException;

/**
 * The base value of every code and the points of every grade, each printed explicitly: a
 * percentage is never computed, since printed tables are rounded and some are neither
 * symmetric nor proportional.
 *
 * <p>
 * As text it has the columns {@code code,base,m5,m4,m3,m2,m1,p1,p2,p3,p4,p5}, or
 * {@code m3} to {@code p3} for seven grades, in any order; further columns are ignored,
 * and so are empty lines and those beginning with {@code #}.
 *
 * @param grades which grades the table has
 * @param values by code, in the order of the table
 */
public record ValueTable(ElementValue.GradeRange grades, Map<String, ElementValue> values) {

	private static final List<String> ONLY_OF_ELEVEN = Stream.of(-5, -4, 4, 5)
		.map(ElementValue.GradeRange::column)
		.toList();

	public ValueTable {
		values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
	}

	/**
	 * Read a table.
	 * @param text in the form described above
	 * @return the table
	 * @throws TabulationException with its position, for whatever is not in that form
	 */
	public static ValueTable parse(String text) {
		TextTable table = TextTable.parse("values", text);
		ElementValue.GradeRange grades = ONLY_OF_ELEVEN.stream().anyMatch(table::has)
				? ElementValue.GradeRange.ELEVEN_GRADES : ElementValue.GradeRange.SEVEN_GRADES;
		Map<String, ElementValue> values = new LinkedHashMap<>();
		for (TextTable.Row row : table.rows()) {
			ElementValue value = row.read("code", (code) -> value(code, grades, row));
			if (values.put(value.code(), value) != null) {
				throw row.refuse("code", Refusal.duplicateCode(value.code()));
			}
		}
		return new ValueTable(grades, values);
	}

	private static ElementValue value(String code, ElementValue.GradeRange grades, TextTable.Row row) {
		List<Points> points = new ArrayList<>();
		grades.grades()
			.forEach((grade) -> points
				.add((grade == 0) ? Points.ZERO : row.points(ElementValue.GradeRange.column(grade))));
		return new ElementValue(code, row.points("base"), grades, points);
	}

	/**
	 * Find what a code is worth.
	 * @param code as called
	 * @return its row, if the table has one
	 */
	public Optional<ElementValue> find(String code) {
		return Optional.ofNullable(this.values.get(code));
	}

	/**
	 * Return what a code is worth.
	 * @param code as called
	 * @return its row
	 * @throws TabulationException {@code unknown-code}
	 */
	public ElementValue value(String code) {
		return find(code).orElseThrow(() -> Refusal.unknownCode(code));
	}

}
