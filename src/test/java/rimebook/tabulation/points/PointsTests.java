package rimebook.tabulation.points;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class PointsTests {

	@ParameterizedTest
	@CsvSource({ "7.25,725", "7,700", "7.5,750", "-0.05,-5", "+1.10,110", "0,0", "0.00,0", "9999999.99,999999999" })
	void readsDecimals(String text, int hundredths) {
		assertThat(Points.parse(text)).isEqualTo(new Points(hundredths));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", " 1", "1.", ".5", "1.234", "1,5", "1e2", "0x1", "12345678", "--1", "NaN", "٣" })
	void refusesWhatIsNoNumberOfPoints(String text) {
		assertThat(PointsFixtures.refusal(() -> Points.parse(text))).hasMessageContaining("'" + text + "'")
			.extracting("code")
			.isEqualTo("not-points");
	}

	@ParameterizedTest
	@CsvSource({ "407,5,81", "-2900,8,-363", "2900,8,363", "1,2,1", "-1,2,-1", "0,9,0", "100,3,33", "200,3,67",
			"-200,3,-67", "5,1,5" })
	void dividesWithHalvesAwayFromZero(int sum, int divisor, int quotient) {
		assertThat(new Points(sum).dividedBy(divisor)).isEqualTo(new Points(quotient));
	}

	@ParameterizedTest
	@CsvSource({ "750,133,998,9.9750", "735,133,978,9.7755", "-50,133,-67,-0.6650", "1,50,1,0.0050", "1,49,0,0.0049" })
	void multipliesWithHalvesAwayFromZero(int points, int factor, int product, String exact) {
		assertThat(new Points(points).times(factor)).isEqualTo(new Points(product));
		assertThat(new Points(points).exactProduct(factor)).hasToString(exact);
	}

	@Test
	void alwaysShowsTwoDecimals() {
		assertThat(List.of(new Points(6510), new Points(-5), Points.ZERO, new Points(Integer.MIN_VALUE)))
			.extracting(Points::toString)
			.containsExactly("65.10", "-0.05", "0.00", "-21474836.48");
	}

	@Test
	void writesSumsWithSigns() {
		assertThat(Points.terms(List.of(new Points(775), new Points(-47), Points.ZERO, new Points(120))))
			.isEqualTo("7.75 - 0.47 + 0.00 + 1.20");
		assertThat(Points.terms(List.of(new Points(-78), new Points(-78)))).isEqualTo("-0.78 - 0.78");
	}

	@Test
	void addsSubtractsAndCompares() {
		assertThat(new Points(150).plus(new Points(-30))).isEqualTo(new Points(120));
		assertThat(new Points(150).minus(new Points(30))).isEqualTo(new Points(120));
		assertThat(new Points(-1)).isLessThan(Points.ZERO).isEqualByComparingTo(new Points(-1));
		assertThat(new Points(5).isBetween(5, 5)).isTrue();
		assertThat(new Points(4).isBetween(5, 9)).isFalse();
		assertThat(new Points(10).isBetween(5, 9)).isFalse();
	}

}
