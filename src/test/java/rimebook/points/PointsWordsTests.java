package rimebook.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.shared.RuleViolationException;

class PointsWordsTests {

	@ParameterizedTest
	@CsvSource({ "2, 2", "+2, 2", "-1, -1", "−5, -5", "' 0 ', 0" })
	void gradesAreReadAsPeopleTypeThem(String typed, int grade) {
		assertThat(PointsWords.readGrade(typed)).hasValue(grade);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "1.5", "12", "--1", "two", "+" })
	void whatIsNoGradeIsNotRead(String typed) {
		assertThat(PointsWords.readGrade(typed)).isEqualTo(OptionalInt.empty());
	}

	@ParameterizedTest
	@CsvSource({ "7.25, 725", "'7,5', 750", "7, 700", "10.00, 1000", "'  .5', -1", "7.255, -1", "-7, -1", "1e3, -1" })
	void marksAreReadWithPointOrComma(String typed, int hundredths) {
		assertThat(PointsWords.readHundredths(typed).orElse(-1)).isEqualTo(hundredths);
	}

	@Test
	void aLineIsReadBackAsItIsWritten() {
		for (PointsLine line : new PointsLine[] { PointsLine.ofElement(12),
				PointsLine.ofComponent("Skating Skills") }) {
			assertThat(PointsLine.parse(line.toString())).isEqualTo(line);
		}
		assertThat(PointsLine.ofElement(3).words(2)).isEqualTo("+2");
		assertThat(PointsLine.ofComponent("Composition").words(725)).isEqualTo("7.25");
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "element:", "element:0", "element:100", "component:", "first", "Composition" })
	void whatIsNoLineIsRefused(String text) {
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> PointsLine.parse(text))
			.satisfies((ex) -> assertThat(ex.field()).isEqualTo("line"));
	}

}
