package rimebook.rosters;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.random.RandomGenerator;

/**
 * Lets the record attest what is stored of a person without telling it: SHA-256 over 16
 * random bytes and the values, each behind its length in four bytes. Names, birth dates
 * and numbers are few enough to be tried one by one; with the bytes, which nobody knows
 * but the row, they are not. Whoever has row and line can compare them, and once the row
 * is gone its line says nothing of it for ever.
 *
 * <p>
 * Every change takes other bytes, so whoever may read a row today cannot try out what
 * stood there before.
 */
final class Commitment {

	private static final int SALT_BYTES = 16;

	private Commitment() {
	}

	/** Other random bytes, as hexadecimal digits. */
	static String salt(RandomGenerator random) {
		byte[] salt = new byte[SALT_BYTES];
		random.nextBytes(salt);
		return HexFormat.of().formatHex(salt);
	}

	/** The 64 hexadecimal digits of a commitment. */
	static String of(String salt, String... values) {
		try {
			MessageDigest digest = MessageDigest.getInstance("SHA-256");
			digest.update(HexFormat.of().parseHex(salt));
			for (String value : values) {
				byte[] bytes = value.getBytes(StandardCharsets.UTF_8);
				digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
				digest.update(bytes);
			}
			return HexFormat.of().formatHex(digest.digest());
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
