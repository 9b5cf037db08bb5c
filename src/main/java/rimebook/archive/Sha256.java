package rimebook.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 in small hexadecimal digits. */
final class Sha256 {

	private static final int AT_ONCE = 1 << 16;

	private Sha256() {
	}

	static String of(byte[] content) {
		return HexFormat.of().formatHex(digest().digest(content));
	}

	/** Of the beginning of a file. */
	static String of(FileChannel file, long length) throws IOException {
		MessageDigest digest = digest();
		ByteBuffer some = ByteBuffer.allocate(AT_ONCE);
		long at = 0;
		while (at < length) {
			some.clear().limit((int) Math.min(AT_ONCE, length - at));
			int read = file.read(some, at);
			if (read < 0) {
				throw new IOException("The file became shorter while it was read");
			}
			digest.update(some.flip());
			at += read;
		}
		return HexFormat.of().formatHex(digest.digest());
	}

	private static MessageDigest digest() {
		try {
			return MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java has SHA-256", ex);
		}
	}

}
