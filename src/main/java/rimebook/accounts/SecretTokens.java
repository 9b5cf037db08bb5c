package rimebook.accounts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

import org.springframework.stereotype.Component;

/**
 * Makes what must not be guessed, and the digests by which it is known again: the
 * database never holds a token.
 */
@Component
class SecretTokens {

	/**
	 * Letters and digits without those that look like one another (0 O, 1 I L, 2 Z, 5 S,
	 * 8 B, U V).
	 */
	static final String ALPHABET = "ACDEFGHJKMNPQRTVWXY34679";

	static final int CODE_LENGTH = 8;

	private static final int TOKEN_BYTES = 32;

	private final SecureRandom random;

	SecretTokens(SecureRandom random) {
		this.random = random;
	}

	/** A token of 32 random bytes, written for use in an address. */
	String token() {
		byte[] bytes = new byte[TOKEN_BYTES];
		this.random.nextBytes(bytes);
		return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
	}

	/** A code of 8 characters that a person can read out and type. */
	String code() {
		return this.random.ints(CODE_LENGTH, 0, ALPHABET.length())
			.collect(StringBuilder::new, (code, index) -> code.append(ALPHABET.charAt(index)), StringBuilder::append)
			.toString();
	}

	/** The SHA-256 digest of a token in hexadecimal digits. */
	static String digest(String token) {
		try {
			byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
			return HexFormat.of().formatHex(digest);
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

}
