package rimebook.points;

import java.util.OptionalInt;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.paper.PaperCards;
import rimebook.placement.MarkLine;
import rimebook.tabulation.points.JudgedElement;

import static org.assertj.core.api.Assertions.assertThat;

class CardLineTests {

	private static final PaperCards.CardLine GRADE = GradedLine
		.of(new CalledElement(new UUID(1, 2), 3, "ME4", JudgedElement.ElementWorth.COUNTS, null, false), 5);

	private static final PaperCards.CardLine COMPONENT = GradedLine.ofComponent("Composition");

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "5.6 | 560", "5,6 | 560", "56 | 560", " 5.6 | 560", "5 | 500", "06 | 60",
			"0.0 | 0", "60 | 600", "6.0 | 600" })
	void aMarkIsReadWithOrWithoutItsPoint(String typed, int hundredths) {
		assertThat(MarkLine.FIRST.read(typed)).hasValue(hundredths);
		assertThat(MarkLine.SECOND.read(typed)).hasValue(hundredths);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", " ", "6.1", "61", "7", "5.65", "-1", "5.", ".6", "560", "x", "5 6" })
	void whatIsNoMarkIsNotRead(String typed) {
		assertThat(MarkLine.FIRST.read(typed)).isEqualTo(OptionalInt.empty());
	}

	@Test
	void gradesAndComponentsKeepTheirRange() {
		assertThat(GRADE.read("+5")).hasValue(5);
		assertThat(GRADE.read("−5")).hasValue(-5);
		assertThat(GRADE.read("6")).isEmpty();
		assertThat(COMPONENT.read("7,25")).hasValue(725);
		assertThat(COMPONENT.read("7.3")).isEmpty();
		assertThat(COMPONENT.read("0")).isEmpty();
		assertThat(COMPONENT.read("10.25")).isEmpty();
	}

	@Test
	void valuesAreWrittenAsTheyAreReadBack() {
		assertThat(MarkLine.FIRST.words(560)).isEqualTo("5.6");
		assertThat(GRADE.words(2)).isEqualTo("+2");
		assertThat(COMPONENT.words(725)).isEqualTo("7.25");
	}

}
