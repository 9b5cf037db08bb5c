package rimebook.keying;

import java.util.ArrayList;
import java.util.List;

import org.springframework.validation.Errors;

import rimebook.points.DeductionNotes;
import rimebook.points.NotedDeduction;

/** The deductions of a performance as typed; a row without an item is none. */
class DeductionsForm extends KeyedForm {

	private static final int SPARE_ROWS = 3;

	private List<Row> rows = new ArrayList<>();

	static DeductionsForm of(KeyingPage page) {
		DeductionsForm form = new DeductionsForm();
		form.restOn(page, (page.sheet().deductions() != null) ? page.sheet().deductions().sequence() : 0);
		if (page.sheet().deductions() != null) {
			page.sheet().deductions().deductions().forEach((deduction) -> form.rows.add(Row.of(deduction)));
		}
		return form.widened();
	}

	/** Make room below what is typed. */
	DeductionsForm widened() {
		int wanted = (int) this.rows.stream().filter(Row::isTyped).count() + SPARE_ROWS;
		while (this.rows.size() < wanted) {
			this.rows.add(new Row());
		}
		return this;
	}

	/** Say beside each field what is wrong with it. */
	void check(Errors errors) {
		for (int i = 0; i < this.rows.size(); i++) {
			Row row = this.rows.get(i);
			if (row.isTyped() && row.item.isBlank()) {
				errors.rejectValue("rows[" + i + "].item", "keying.desk.item.missing");
			}
			if (row.isTyped() && !row.count.strip().matches("[1-9]\\d{0,2}")) {
				errors.rejectValue("rows[" + i + "].count", "keying.desk.count.wrong");
			}
		}
	}

	DeductionNotes.NoteDeductions note() {
		return new DeductionNotes.NoteDeductions(performanceGiven(), getSequence(),
				this.rows.stream().filter(Row::isTyped).map(Row::item).toList());
	}

	public List<Row> getRows() {
		return this.rows;
	}

	public void setRows(List<Row> rows) {
		this.rows = rows;
	}

	/** One row as typed. */
	static class Row {

		private String item = "";

		private String count = "";

		static Row of(NotedDeduction deduction) {
			Row row = new Row();
			row.item = deduction.item();
			row.count = String.valueOf(deduction.count());
			return row;
		}

		boolean isTyped() {
			return !this.item.isBlank() || !this.count.isBlank();
		}

		DeductionNotes.NoteDeductions.Item item() {
			return new DeductionNotes.NoteDeductions.Item(this.item, Integer.parseInt(this.count.strip()));
		}

		public String getItem() {
			return this.item;
		}

		public void setItem(String item) {
			this.item = item;
		}

		public String getCount() {
			return this.count;
		}

		public void setCount(String count) {
			this.count = count;
		}

	}

}
