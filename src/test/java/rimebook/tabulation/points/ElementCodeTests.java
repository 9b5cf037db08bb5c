package rimebook.tabulation.points;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class ElementCodeTests {

	@Test
	void takesACodeApart() {
		assertThat(ElementCode.parse("NHE3+s4")).isEqualTo(new ElementCode("NHE", ElementCode.ElementLevel.THREE,
				new ElementCode.ElementFeature("s", ElementCode.ElementLevel.FOUR), 0));
		assertThat(ElementCode.parse("ME4<")).isEqualTo(new ElementCode("ME", ElementCode.ElementLevel.FOUR, null, 1));
		assertThat(ElementCode.parse("GL1<<")).isEqualTo(new ElementCode("GL", ElementCode.ElementLevel.ONE, null, 2));
		assertThat(ElementCode.parse("BB")).isEqualTo(new ElementCode("B", ElementCode.ElementLevel.BASIC, null, 0));
		assertThat(ElementCode.parse("IB+piB").feature())
			.isEqualTo(new ElementCode.ElementFeature("pi", ElementCode.ElementLevel.BASIC));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "ME", "ME5", "ME0", "me4", "ME4<<<", "ME4+", "ME4+s", "ME4+S4", "ME4 ", "4", "ME4*" })
	void refusesWhatIsNoCode(String code) {
		assertThat(PointsFixtures.refusal(() -> ElementCode.parse(code)).code()).isEqualTo("code-malformed");
	}

	@ParameterizedTest
	@CsvSource({ "ME4,ME3", "I2+pi3,I1+pi3", "GL1<,GLB<" })
	void lowersTheElementByOneLevel(String code, String lowered) {
		assertThat(ElementCode.parse(code).lowered()).map(ElementCode::toString).contains(lowered);
	}

	@Test
	void thereIsNothingBelowBasic() {
		assertThat(ElementCode.parse("MEB").lowered()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "ME4, ME", "ME3<<, ME", "MEB, ME", "I4+pi3, I", "IB, I", "NHE3+s4, NHE", "NHE4, NHE", "ABB, AB",
			"PB3, PB", "CrI1, CrI", "SySp2, SySp", "ME, ME", "?, ?" })
	void elementIsTheSameWhateverItsLevelPartOrDowngrade(String code, String element) {
		assertThat(ElementCode.elementOf(code)).isEqualTo(element);
	}

}
