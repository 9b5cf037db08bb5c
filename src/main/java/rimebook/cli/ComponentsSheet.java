package rimebook.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** A file with the components of a segment and the marks of each judge. */
record ComponentsSheet(CsvFile file, PanelColumns columns, EntryRows entries) {

	private static final String EXPECTED = "entry,component,factor,J1,...,Jn with marks";

	private static final String FACTOR = "a factor from 0.01 to 100.00";

	static ComponentsSheet of(CsvFile file) {
		PanelColumns columns = PanelColumns.of(file, List.of("component", "factor"), EXPECTED);
		return new ComponentsSheet(file, columns, EntryRows.of(file, columns.header().entry()));
	}

	/**
	 * Return the components with their factors, in the order in which they first come. A
	 * component has one factor in the whole file.
	 */
	List<SegmentRules.ComponentRule> rules() {
		Map<String, CsvFile.Row> first = new HashMap<>();
		List<SegmentRules.ComponentRule> rules = new ArrayList<>();
		for (CsvFile.Row row : this.file.rows()) {
			SegmentRules.ComponentRule rule = rule(row);
			CsvFile.Row earlier = first.putIfAbsent(rule.name(), row);
			if (earlier == null) {
				rules.add(rule);
			}
			else if (rule(earlier).factor() != rule.factor()) {
				throw field(row, "factor").refuse("is another factor than on line " + earlier.line(),
						"one factor for each component");
			}
		}
		return rules;
	}

	private SegmentRules.ComponentRule rule(CsvFile.Row row) {
		SheetField name = field(row, "component");
		if (name.text().isEmpty()) {
			throw name.fault("the component is missing; expected its name");
		}
		return field(row, "factor").read(
				(text) -> new SegmentRules.ComponentRule(name.text(), Points.parse(text).hundredths(),
						new PointsRules.RuleSource(PointsRules.RuleSource.Provenance.PRACTICE, this.file.name())),
				"is not a factor", FACTOR);
	}

	/**
	 * Return the components of one entry.
	 * @param names that it must have
	 */
	List<JudgedComponent> components(String entry, List<String> names) {
		Set<String> missing = new TreeSet<>(names);
		List<JudgedComponent> components = new ArrayList<>();
		for (CsvFile.Row row : this.entries.of(entry)) {
			SheetField name = field(row, "component");
			if (!missing.remove(name.text())) {
				throw name.refuse("is there twice for entry '" + entry + "'", "each component once");
			}
			components.add(component(row, name.text()));
		}
		missing.stream().findFirst().ifPresent((name) -> {
			throw this.file.fault(this.entries.of(entry).get(0).line(), this.entries.column(),
					"entry '" + entry + "' has no component '" + name + "'; expected every component of every entry");
		});
		return components;
	}

	private JudgedComponent component(CsvFile.Row row, String name) {
		List<@Nullable Points> marks = new ArrayList<>();
		this.columns.judges().forEach((column) -> marks.add(mark(new SheetField(this.file, row, column))));
		return new SheetField(this.file, row, this.columns.judges().get(0))
			.make(() -> new JudgedComponent(name, marks));
	}

	private static @Nullable Points mark(SheetField field) {
		if (field.text().isEmpty()) {
			return null;
		}
		String expected = "0.25 to 10.00 in steps of 0.25, or nothing where the judge gave none";
		Points mark = field.read(Points::parse, "is not a mark", expected);
		if (!JudgedComponent.isMark(mark)) {
			throw field.refuse("is not a mark", expected);
		}
		return mark;
	}

	private SheetField field(CsvFile.Row row, String column) {
		return new SheetField(this.file, row, this.columns.required(column));
	}

}
