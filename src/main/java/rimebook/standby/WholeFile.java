package rimebook.standby;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Files that are there whole or not at all, whenever the power goes. */
final class WholeFile {

	/** What a file is called until it is whole. */
	static final String PART = ".part";

	private WholeFile() {
	}

	static void write(Path file, String text) throws IOException {
		Path part = file.resolveSibling(file.getFileName() + PART);
		Files.writeString(part, text, StandardCharsets.UTF_8);
		keep(part, file);
	}

	/** Give a file its name once the disk has it. */
	static void keep(Path part, Path file) throws IOException {
		force(part);
		try {
			Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
		}
		catch (AtomicMoveNotSupportedException ex) {
			Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
		}
		forceFolder(file.toAbsolutePath().resolveSibling(""));
	}

	/** Write at the end of a file and wait until the disk has it. */
	static void append(Path file, String text) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
			ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
			while (bytes.hasRemaining()) {
				channel.write(bytes);
			}
			channel.force(true);
		}
	}

	static String sha256(Path file) throws IOException {
		return sha256(file, Pace.NONE);
	}

	static String sha256(Path file, Pace pace) throws IOException {
		MessageDigest digest = digest();
		try (InputStream in = pace.over(Files.newInputStream(file))) {
			byte[] bytes = new byte[1 << 16];
			for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
				digest.update(bytes, 0, read);
			}
		}
		return HexFormat.of().formatHex(digest.digest());
	}

	private static MessageDigest digest() {
		try {
			return MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

	private static void force(Path file) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
			channel.force(true);
		}
	}

	/**
	 * Not every system can do it with a folder; there the name is kept a little later.
	 */
	private static void forceFolder(Path folder) {
		try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
			channel.force(true);
		}
		catch (IOException ex) {
			// Windows: a folder cannot be opened.
			return;
		}
	}

}
