package rimebook.timetable.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;

/**
 * What is sent with one press.
 *
 * @param seen the number of the plan that the person was looking at
 * @param note why a version differs from the one before
 */
record ActForm(int seen, @Nullable String note) {

	String noted() {
		return Given.text(this.note);
	}

}
