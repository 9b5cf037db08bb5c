package rimebook.keying;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;

import org.springframework.validation.Errors;

import rimebook.pages.Given;
import rimebook.points.CalledElement;
import rimebook.points.ElementCalls;
import rimebook.points.PointsWords;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.ValueTable;
import rimebook.wording.Sentence;

/** The called elements as typed; a row without a code is no element. */
class ElementsForm extends KeyedForm {

	/** As many rows as a programme usually has, and some to spare. */
	private static final int USUAL_ROWS = 12;

	private static final int SPARE_ROWS = 3;

	private static final int HIGHEST_BASE = 100_000;

	private List<Row> rows = new ArrayList<>();

	public List<Row> getRows() {
		return this.rows;
	}

	public void setRows(List<Row> rows) {
		this.rows = rows;
	}

	static ElementsForm of(KeyingPage page) {
		ElementsForm form = new ElementsForm();
		form.restOn(page, (page.sheet().list() != null) ? page.sheet().list().sequence() : 0);
		page.elements().forEach((element) -> form.rows.add(Row.of(element)));
		return form.widened();
	}

	/** Make room below what is typed. */
	ElementsForm widened() {
		int wanted = Math.max(USUAL_ROWS, (int) this.rows.stream().filter(Row::isTyped).count() + SPARE_ROWS);
		while (this.rows.size() < wanted) {
			this.rows.add(new Row());
		}
		return this;
	}

	/** Put an empty row before that one. */
	ElementsForm inserted(int index) {
		this.rows.add(Math.max(0, Math.min(index, this.rows.size())), new Row());
		return widened();
	}

	/** Say beside each field what is wrong with it. */
	void check(ValueTable values, Errors errors) {
		for (int i = 0; i < this.rows.size(); i++) {
			if (this.rows.get(i).isTyped()) {
				errors.pushNestedPath("rows[" + i + "]");
				this.rows.get(i).check(values, errors);
				errors.popNestedPath();
			}
		}
		if (this.rows.stream().noneMatch(Row::isTyped)) {
			errors.rejectValue("rows[0].code", "keying.desk.elements.none");
		}
	}

	ElementCalls.CallElements calls() {
		return new ElementCalls.CallElements(performanceGiven(), getSequence(),
				this.rows.stream().filter(Row::isTyped).map(Row::call).toList());
	}

	/** One row as typed. */
	static class Row {

		private String element = "";

		private String code = "";

		private JudgedElement.ElementWorth worth = JudgedElement.ElementWorth.COUNTS;

		private String base = "";

		private boolean review;

		private boolean reviewed;

		static Row of(CalledElement element) {
			Row row = new Row();
			row.element = element.id().toString();
			row.code = element.code();
			row.worth = element.worth();
			row.base = (element.base() != null) ? PointsWords.of(element.base()) : "";
			row.review = element.review();
			row.reviewed = element.review();
			return row;
		}

		boolean isTyped() {
			return !this.code.isBlank() || !this.base.isBlank();
		}

		void check(ValueTable values, Errors errors) {
			if (this.code.isBlank()) {
				errors.rejectValue("code", "keying.desk.code.missing");
			}
			else if (this.code.strip().length() > 20) {
				errors.rejectValue("code", "keying.desk.code.long");
			}
			else if (this.worth == JudgedElement.ElementWorth.COUNTS && values.find(this.code.strip()).isEmpty()) {
				errors.rejectValue("code", "keying.desk.code.unknown", new Object[] { this.code.strip() }, null);
			}
			OptionalInt typed = PointsWords.readHundredths(this.base);
			if (!this.base.isBlank() && (typed.isEmpty() || typed.getAsInt() > HIGHEST_BASE)) {
				errors.rejectValue("base", "keying.desk.base.wrong");
			}
		}

		ElementCalls.CallElements.Call call() {
			OptionalInt typed = PointsWords.readHundredths(this.base);
			return new ElementCalls.CallElements.Call(
					this.element.isBlank() ? null
							: Given.read("rows", this.element, UUID::fromString, Sentence.of("keying.open-again")),
					this.code.strip(), this.worth, typed.isPresent() ? typed.getAsInt() : null, this.review);
		}

		/** Whether the technical panel still looks at it again. */
		public boolean isReview() {
			return this.review;
		}

		public void setReview(boolean review) {
			this.review = review;
		}

		/** Whether it was under review when the form was filled. */
		public boolean isReviewed() {
			return this.reviewed;
		}

		public void setReviewed(boolean reviewed) {
			this.reviewed = reviewed;
		}

		public String getElement() {
			return this.element;
		}

		public void setElement(String element) {
			this.element = element;
		}

		public String getCode() {
			return this.code;
		}

		public void setCode(String code) {
			this.code = code;
		}

		public JudgedElement.ElementWorth getWorth() {
			return this.worth;
		}

		public void setWorth(JudgedElement.ElementWorth worth) {
			this.worth = worth;
		}

		public String getBase() {
			return this.base;
		}

		public void setBase(String base) {
			this.base = base;
		}

	}

}
