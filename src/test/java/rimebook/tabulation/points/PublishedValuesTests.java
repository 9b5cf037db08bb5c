package rimebook.tabulation.points;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** The table of values of synchronized skating that comes with the product. */
class PublishedValuesTests {

	private final ValueTable values = PublishedRules.RULES.values();

	/** The printed columns are headed 10% to 50% of the base value. */
	@Test
	void everyCellIsItsShareOfTheBaseValueRoundedAwayFromZero() {
		int cells = 0;
		for (ElementValue value : this.values.values().values()) {
			for (int grade : this.values.grades().grades()) {
				BigDecimal share = value.base().toDecimal().multiply(BigDecimal.valueOf(grade)).movePointLeft(1);
				assertThat(value.points(grade).toDecimal()).as(value.code() + " " + grade)
					.isEqualTo(share.setScale(2, RoundingMode.HALF_UP));
				cells += (grade == 0) ? 0 : 1;
			}
		}
		assertThat(cells).isEqualTo(1500);
		assertThat(this.values.values()).hasSize(150);
	}

	@Test
	void everyCodeIsTakenApartAndPutTogetherAgain() {
		assertThat(this.values.values().keySet())
			.allSatisfy((code) -> assertThat(ElementCode.parse(code)).hasToString(code));
	}

	@Test
	void everyCodeHasANameInWords() {
		assertThat(this.values.values().keySet())
			.allSatisfy((code) -> assertThat(PublishedRules.RULES.nameOf(code)).isNotEqualTo(code).contains("level"));
	}

	/**
	 * ISU Communication 2693, 2 April 2025: base values of GL and ME with one and two
	 * downgrades.
	 */
	@Test
	void aDowngradeTakesAQuarterAndThreeQuartersOfAPoint() {
		this.values.values().forEach((code, value) -> {
			int downgrades = ElementCode.parse(code).downgrades();
			if (downgrades > 0) {
				ElementValue whole = this.values.value(code.replace("<", ""));
				assertThat(whole.base().minus(value.base())).as(code)
					.isEqualTo(new Points((downgrades == 1) ? 25 : 75));
			}
		});
	}

	@Test
	void aHigherLevelIsWorthMore() {
		this.values.values()
			.forEach((code, value) -> ElementCode.parse(code)
				.lowered()
				.flatMap((lower) -> this.values.find(lower.toString()))
				.ifPresent((lower) -> assertThat(value.base()).as(code).isGreaterThan(lower.base())));
	}

	@Test
	void theFeatureBelongsToTheRow() {
		assertThat(this.values.value("I4+pi3").base()).hasToString("7.00");
		assertThat(Objects.requireNonNull(ElementCode.parse("I4+pi3").feature()))
			.isEqualTo(new ElementCode.ElementFeature("pi", ElementCode.ElementLevel.THREE));
		assertThat(this.values.find("NHE4")).isEmpty();
	}

}
