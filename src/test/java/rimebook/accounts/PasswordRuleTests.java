package rimebook.accounts;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class PasswordRuleTests {

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource({ "elevenchars, password-too-short", "'', password-too-short", "results.desk, password-is-name",
			"RESULTS.DESK, password-is-name", "ada the secretary, password-is-name",
			"0123456789012345678901234567890123456789012345678901234567890123x, password-too-long",
			"ääääääääääääääääääääääääääääääääääääääääääääää, password-too-long" })
	void refuses(String password, String code) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> PasswordRule.check(password, "results.desk", "Ada the Secretary"))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo(code))
			.satisfies((ex) -> assertThat(ex.field()).isEqualTo("password"));
	}

	@ParameterizedTest
	@CsvSource({ "aaaaaaaaaaaa", "twelve chars", "0123456789012345678901234567890123456789012345678901234567890123" })
	void asksForNothingButLength(String password) {
		assertThat(PasswordRule.check(password, "results.desk", "Ada")).isEqualTo(password);
	}

	@Test
	void countsCharactersAsPeopleDo() {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> PasswordRule.check("\uD83E\uDDCA".repeat(11), "a.b", "Ada"));
		assertThat(PasswordRule.check("\uD83E\uDDCA".repeat(12), "a.b", "Ada")).hasSize(24);
	}

}
