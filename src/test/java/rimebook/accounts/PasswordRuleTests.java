package rimebook.accounts;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class PasswordRuleTests {

	/** Characters of two units each. */
	private static final String TWELVE = "\uD83E\uDDCA\uD83C\uDFA9\uD83D\uDD14\uD83E\uDD41\uD83C\uDF32\uD83D\uDC1F"
			+ "\uD83E\uDDED\uD83C\uDF0B\uD83D\uDD6F\uD83E\uDEB6\uD83C\uDFBB\uD83D\uDCEF";

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
	@CsvSource({ "twelve chars", "unbelievable", "kqzvwhtmrbxj", "ice lantern rime book",
			"kqzvwhtmrbxj kqzvwhtmrbxp kqzvwhtmrbxs kqzvwhtmrbxt kqzvwhtmrbxq" })
	void asksForNothingButLength(String password) {
		assertThat(PasswordRule.check(password, "results.desk", "Ada")).isEqualTo(password);
	}

	/**
	 * Single ones, with ends that many add, repeated, a row of keys, and the own name.
	 */
	@ParameterizedTest
	@ValueSource(strings = { "password1234", "P@ssw0rd1234", "Password123!", "passwordpassword", "iloveyouiloveyou",
			"123456789012", "1234567890123456", "aaaaaaaaaaaa", "abcabcabcabc", "qwertyuiopasdfgh", "1q2w3e4r5t6y",
			"summer2026summer", "Winter2026!!", "welcome12345", "rimebook2026", "skatingskating", "adasecretary",
			"secretary2026", "results.desk1" })
	void refusesWhatIsTriedFirst(String password) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> PasswordRule.check(password, "results.desk", "Ada the Secretary"))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("password-common"))
			.satisfies((ex) -> assertThat(ex.field()).isEqualTo("password"));
	}

	@Test
	void countsCharactersAsPeopleDo() {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> PasswordRule.check(TWELVE.substring(2), "a.b", "Ada"))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("password-too-short"));
		assertThat(PasswordRule.check(TWELVE, "a.b", "Ada")).hasSize(24);
	}

}
