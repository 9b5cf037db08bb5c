package rimebook.music;

import java.io.InputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Makes the digest of what is read while it is read. */
final class Digesting extends DigestInputStream {

	Digesting(InputStream from) {
		super(from, sha256());
	}

	private static MessageDigest sha256() {
		try {
			return MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

	/** The digest of all that was read, once. */
	String hex() {
		return HexFormat.of().formatHex(getMessageDigest().digest());
	}

}
