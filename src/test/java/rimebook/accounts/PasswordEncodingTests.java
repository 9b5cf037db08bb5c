package rimebook.accounts;

import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;

import static org.assertj.core.api.Assertions.assertThat;

/** The service's own digests; in test runs every application has cheaper ones. */
class PasswordEncodingTests {

	private final PasswordEncoder passwords = new AccountsConfiguration().passwordEncoder();

	@Test
	void aDigestNamesItsAlgorithmAndTakesATenthOfASecondToGuess() {
		String digest = this.passwords.encode("ice lantern rime book");
		assertThat(digest).startsWith("{bcrypt}$2a$10$");
		assertThat(this.passwords.matches("ice lantern rime book", digest)).isTrue();
		assertThat(this.passwords.matches("ice lantern rime boot", digest)).isFalse();
	}

	@Test
	void aDigestOfAnotherAlgorithmIsStillUnderstood() {
		String digest = "{noop}ice lantern rime book";
		assertThat(this.passwords.matches("ice lantern rime book", digest)).isTrue();
		assertThat(this.passwords.upgradeEncoding(digest)).as("kept as bcrypt from then on").isTrue();
	}

}
