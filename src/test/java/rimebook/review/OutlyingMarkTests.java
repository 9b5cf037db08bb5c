package rimebook.review;

import java.util.Locale;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.review.Panel.gave;

class OutlyingMarkTests {

	private static final ReviewedJudge JUDGE = new ReviewedJudge(3, "Ada Hart", false);

	@Test
	void saysWhatTheOthersGave() {
		OutlyingMark mark = of(Aspect.COMPONENT, Panel.line("Frost", "Composition", gave(425, 650, 700, 625)));
		assertThat(mark.spoken()).hasToString(
				"Judge 3, Ada Hart gave Frost (Composition) 4.25: less than all others, who gave 6.25 to 7, on average 6.58.");
		assertThat(mark.spoken().in(Locale.FRENCH)).contains("4,25", "6,25 à 7", "6,58");
		assertThat(mark.spoken().in(Locale.forLanguageTag("fi"))).contains("4,25", "6,25–7", "6,58");
	}

	@Test
	void onesThatAreAllTheSameAreSaidOnce() {
		assertThat(of(Aspect.FIRST_MARK, Panel.line("Frost", "", gave(550, 500, 500))).spoken())
			.hasToString("Judge 3, Ada Hart gave Frost 5.5: more than all others, who gave 5, on average 5.");
	}

	/** The ninth place is no higher mark than the second. */
	@Test
	void aPlaceIsNeitherMoreNorLess() {
		assertThat(of(Aspect.PLACE, Panel.line("Frost", "", gave(900, 200, 350))).spoken())
			.hasToString("Judge 3, Ada Hart had Frost on place 9, the others on 2 to 3.5, on average 2.75.");
	}

	@Test
	void aSeatThatNobodyHasIsItsNumber() {
		assertThat(new ReviewedJudge(2, "", false).spoken()).hasToString("Judge 2");
		assertThat(new ReviewedJudge(2, "Bo Tally", true).spoken()).hasToString("Judge 2 (the substitute), Bo Tally");
	}

	private static OutlyingMark of(Aspect aspect, MarkLine line) {
		return OutlyingMark.of(aspect, JUDGE, line.of(0).orElseThrow());
	}

}
