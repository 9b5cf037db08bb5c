package rimebook.accounts;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import java.util.Locale;

import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

import org.springframework.stereotype.Component;

/**
 * The digests by which codes of seats are known again. A code is short, since it is typed
 * from paper, so its digest is slow to make (PBKDF2, RFC 8018): whoever has a copy of the
 * database needs days of a fast machine to find a code, and codes are renewed sooner than
 * that. The salt is the installation's own; it has to be one for all codes, since a
 * tablet shows a code and not a seat.
 */
@Component
class CodeDigests {

	/** About 10 ms on a server of today. */
	private static final int ROUNDS = 20_000;

	private static final int BITS = 256;

	private static final String ALGORITHM = "PBKDF2WithHmacSHA256";

	private final CrewSigns signs;

	CodeDigests(CrewSigns signs) {
		this.signs = signs;
	}

	/**
	 * The digest of a code in hexadecimal digits; small letters, blanks and hyphens do
	 * not matter.
	 */
	String of(String code) {
		byte[] salt = this.signs.signed("seat-code").getBytes(StandardCharsets.UTF_8);
		PBEKeySpec spec = new PBEKeySpec(normal(code).toCharArray(), salt, rounds(), BITS);
		try {
			byte[] digest = SecretKeyFactory.getInstance(ALGORITHM).generateSecret(spec).getEncoded();
			return HexFormat.of().formatHex(digest);
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("Every Java platform has " + ALGORITHM, ex);
		}
	}

	/** So many that a guess takes its time; tests of other things have fewer. */
	int rounds() {
		return ROUNDS;
	}

	private static String normal(String code) {
		return code.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
	}

}
