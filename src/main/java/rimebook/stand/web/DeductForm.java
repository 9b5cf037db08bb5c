package rimebook.stand.web;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.performances.PerformanceId;
import rimebook.points.DeductionNotes;
import rimebook.wording.Sentence;

/** One deduction as the referee types it. */
record DeductForm(@Nullable String performance, @Nullable String sequence, @Nullable String item,
		@Nullable String count, @Nullable String noter, @Nullable String touch) {

	static final DeductForm EMPTY = new DeductForm("", "", "", "1", DeductionNotes.Noter.SELF.name(), "");

	PerformanceId performanceGiven() {
		return Given.read("performance", this.performance, PerformanceId::of, Sentence.of("stand.performance-missing"));
	}

	int sequenceSeen() {
		return Given.read("sequence", this.sequence, Integer::valueOf, Sentence.of("stand.open-again"));
	}

	DeductionNotes.NoteDeductions.Item given() {
		String chosen = Given.read("item", this.item, DeductForm::chosen, Sentence.of("stand.item-missing"));
		int number = Given.read("count", this.count, (typed) -> Integer.valueOf(typed.strip()),
				Sentence.of("stand.count-malformed"));
		return new DeductionNotes.NoteDeductions.Item(chosen, number);
	}

	DeductionNotes.Noter noterGiven() {
		return Given.read("noter", this.noter, DeductionNotes.Noter::valueOf, Sentence.of("stand.noter-missing"));
	}

	/** The touch of the clock that it is taken for; none for what is typed by hand. */
	@Nullable Instant touchGiven() {
		return Touched.read(this.touch);
	}

	private static String chosen(String item) {
		if (item.isBlank()) {
			throw new IllegalArgumentException("nothing chosen");
		}
		return item;
	}

}
