package rimebook.cli;

import java.util.List;
import java.util.regex.Pattern;

import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.Points;

/** A file with what is taken off, positive. */
record DeductionsSheet(CsvFile file, HeaderColumns columns, EntryRows entries) {

	private static final String POINTS = "0.00 to 1000.00, as much as is taken off";

	static DeductionsSheet of(CsvFile file) {
		HeaderColumns columns = new HeaderColumns(file, Pattern.compile("item|points"), "entry,item,points");
		return new DeductionsSheet(file, columns, EntryRows.of(file, columns.entry()));
	}

	List<DeductionRule.Deduction> deductions(String entry) {
		return this.entries.of(entry).stream().map(this::deduction).toList();
	}

	private DeductionRule.Deduction deduction(CsvFile.Row row) {
		SheetField item = new SheetField(this.file, row, this.columns.required("item"));
		SheetField points = new SheetField(this.file, row, this.columns.required("points"));
		if (item.text().isEmpty()) {
			throw item.fault("the item is missing; expected what the points are taken off for");
		}
		return points.read((text) -> DeductionRule.Deduction.of(item.text(), Points.parse(text)), "is not a deduction",
				POINTS);
	}

}
