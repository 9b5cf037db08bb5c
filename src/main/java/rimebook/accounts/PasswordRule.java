package rimebook.accounts;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What a password must be: long, not the person's own name, and none that is tried first
 * ({@link CommonPasswords}). No rule on kinds of characters (NIST SP 800-63B, section
 * 3.1.1.2). The upper bound is that of the digest, bcrypt, which reads 72 bytes.
 */
final class PasswordRule {

	static final int LEAST = 12;

	static final int MOST = 64;

	private static final int MOST_BYTES = 72;

	private PasswordRule() {
	}

	static String check(@Nullable String password, String signInName, String displayName) {
		String given = (password != null) ? password : "";
		int length = given.codePointCount(0, given.length());
		if (length < LEAST) {
			throw refused("password-too-short", Sentence.of("accounts.password-too-short", length, LEAST));
		}
		if (length > MOST || given.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
			throw refused("password-too-long", Sentence.of("accounts.password-too-long", MOST));
		}
		if (isOneOf(given, signInName, displayName)) {
			throw refused("password-is-name", Sentence.of("accounts.password-is-name"));
		}
		if (CommonPasswords.include(given, signInName, displayName)) {
			throw refused("password-common", Sentence.of("accounts.password-common"));
		}
		return given;
	}

	private static boolean isOneOf(String password, String signInName, String displayName) {
		String small = password.toLowerCase(Locale.ROOT);
		return small.equals(signInName) || small.equals(displayName.toLowerCase(Locale.ROOT));
	}

	private static RuleViolationException refused(String code, Sentence sentence) {
		return new RuleViolationException(code, "password", sentence);
	}

}
