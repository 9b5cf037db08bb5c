package rimebook.shared;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class TypedTextTests {

	@ParameterizedTest
	@ValueSource(ints = { 0x0000, 0x0007, 0x001B, 0x007F, 0x0085, 0x061C, 0x200E, 0x200F, 0x202A, 0x202E, 0x2066,
			0x2069, 0xD800, 0xE000, 0xFDD0, 0xFFFE, 0xFFFF, 0x1FFFE, 0x10FFFF, 0xE0001 })
	void whatMakesTextsLookAlikeOrIsNoCharacterIsRefusedEverywhere(int character) {
		String text = "Kai" + new String(Character.toChars(character)) + "Berg";
		String sign = "U+%04X".formatted(character);
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> Required.text("text", text, 20))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("field-not-text"))
			.withMessageContaining(sign);
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> Required.optional("text", text, 20));
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> Name.required("name", text));
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> Name.optional("name", text));
	}

	@ParameterizedTest
	@ValueSource(ints = { 0x00AD, 0x200B, 0x2060, 0xFEFF })
	void whatIsNotSeenIsDropped(int character) {
		String text = "Kai" + Character.toString(character) + "Berg" + Character.toString(character);
		assertThat(Required.text("text", text, 20)).isEqualTo("KaiBerg");
		assertThat(Name.required("name", text)).isEqualTo("KaiBerg");
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> Name.required("name", Character.toString(character)))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("field-missing"));
	}

	@Test
	void aNameIsWrittenInOneWay() {
		assertThat(Name.required("name", "\uFF2B\uFF41\uFF49 Be\u0301rg")).isEqualTo("Kai B\u00E9rg");
		assertThat(Required.text("text", "1\u00BD turns", 20)).isEqualTo("1\u00BD turns");
	}

	@ParameterizedTest
	@ValueSource(ints = { 0x200C, 0x200D })
	void aNameHoldsNoJoinersThoughATextMay(int character) {
		String text = "Kai" + Character.toString(character) + "Berg";
		assertThat(Required.text("text", text, 20)).isEqualTo(text);
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> Name.required("name", text))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("field-not-text"));
	}

	@Test
	void whoeverWasNotedWithoutAnAccountIsKnownByTheName() {
		Actor kai = new Actor("person:1", "Kai Berg", "referee", "test");
		assertThat(kai.isNotedAs("person:1", "Somebody")).isTrue();
		assertThat(kai.isNotedAs("name:Kai Berg", "Kai Berg")).isTrue();
		assertThat(kai.isNotedAs("", "Kai  berg")).isTrue();
		assertThat(kai.isNotedAs("person:2", "Kai Berg")).isFalse();
		assertThat(kai.isNotedAs("", "")).isFalse();
	}

	@Test
	void aWideSignIsStillAFormula() {
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> Name.required("name", "\uFF1D1+1"))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("field-formula"));
	}

	@ParameterizedTest(name = "{0} is written as {1}")
	@CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
			=E1      | '=E1
			+A1      | '+A1
			-A1      | '-A1
			@SUM(A1) | '@SUM(A1)
			-1.00    | -1.00
			+0,5     | +0,5
			5.6      | 5.6
			Team A   | Team A
			'quoted  | 'quoted
			""")
	void aCellIsNeverAFormulaAndIsReadBackAsItWas(String text, String cell) {
		assertThat(SpreadsheetCell.of(text)).isEqualTo(cell);
		assertThat(SpreadsheetCell.read(cell)).isEqualTo(text);
	}

	@Test
	void aNameWrittenByHandMeansWhoeverGoesByIt() {
		Actor actor = new Actor("person:1", "Kai B\u00E9rg", "referee", "test");
		assertThat(actor.goesBy("  kai   BE\u0301RG ")).isTrue();
		assertThat(actor.goesBy("Kai Berg")).isFalse();
		assertThat(actor.hasId("person:1")).isTrue();
		assertThat(actor.hasId("")).isFalse();
	}

}
