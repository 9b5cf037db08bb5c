package rimebook.archive;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a ZIP file that tells of every changed byte. The last 64 bytes, in the file's
 * comment, are the SHA-256 of all before them; the last file inside,
 * {@code manifest.txt}, has that of each other one. It is written beside its place,
 * forced to the disk, and gets its name only then. The times of the files inside are
 * always the same, so the same content gives the same bytes.
 */
final class SealedZip implements AutoCloseable {

	/** The file inside that lists the others. */
	static final String MANIFEST = "manifest.txt";

	/** How many bytes the seal has. */
	static final int SEAL = 64;

	/** What stands before the seal. */
	static final String SEAL_WORDS = "Rimebook archive. SHA-256 of all before: ";

	private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

	private final Path target;

	private final Path part;

	private final OutputStream file;

	private final ZipOutputStream zip;

	private final Map<String, String> manifest = new TreeMap<>();

	private SealedZip(Path target, Path part, OutputStream file) {
		this.target = target;
		this.part = part;
		this.file = file;
		this.zip = new ZipOutputStream(new BufferedOutputStream(file), StandardCharsets.UTF_8);
		this.zip.setComment(SEAL_WORDS + "-".repeat(SEAL));
	}

	/** Begin a file; nothing stands at its place before it is finished. */
	static SealedZip create(Path target) throws IOException {
		Path part = Files.createTempFile(directory(target), target.getFileName() + ".", ".part");
		return new SealedZip(target, part, Files.newOutputStream(part));
	}

	private static Path directory(Path target) {
		Path directory = target.toAbsolutePath().getParent();
		return (directory != null) ? directory : Path.of("").toAbsolutePath();
	}

	/** Put in a file. */
	void add(String name, byte[] content) throws IOException {
		if (this.manifest.put(name, Sha256.of(content)) != null) {
			throw new IllegalStateException("There are two files " + name);
		}
		write(name, content);
	}

	/** Put in a text. */
	void add(String name, String content) throws IOException {
		add(name, content.getBytes(StandardCharsets.UTF_8));
	}

	private void write(String name, byte[] content) throws IOException {
		ZipEntry entry = new ZipEntry(name);
		entry.setTimeLocal(NO_TIME);
		this.zip.putNextEntry(entry);
		this.zip.write(content);
		this.zip.closeEntry();
	}

	/** Finish it, and put it in its place. */
	void finish() throws IOException {
		StringBuilder lines = new StringBuilder();
		this.manifest.forEach((name, digest) -> lines.append(digest).append("  ").append(name).append('\n'));
		write(MANIFEST, lines.toString().getBytes(StandardCharsets.UTF_8));
		this.zip.close();
		seal();
		Files.move(this.part, this.target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
		forceDirectory(this.target);
	}

	private void seal() throws IOException {
		try (FileChannel file = FileChannel.open(this.part, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
			String seal = Sha256.of(file, file.size() - SEAL);
			ByteBuffer bytes = ByteBuffer.wrap(seal.getBytes(StandardCharsets.US_ASCII));
			long at = file.size() - SEAL;
			while (bytes.hasRemaining()) {
				at += file.write(bytes, at);
			}
			file.force(true);
		}
	}

	/**
	 * So that the name survives a power cut, where the system lets a directory be opened.
	 */
	static void forceDirectory(Path target) {
		try (FileChannel directory = FileChannel.open(directory(target))) {
			directory.force(true);
		}
		catch (IOException ex) {
			// Not every system has it; the content is on the disk
		}
	}

	/** Leave nothing behind if it was not finished. */
	@Override
	public void close() throws IOException {
		try {
			quietly(this.zip);
			quietly(this.file);
		}
		finally {
			Files.deleteIfExists(this.part);
		}
	}

	/** A ZIP file that cannot be ended leaves open what it is written to. */
	private static void quietly(OutputStream out) {
		try {
			out.close();
		}
		catch (IOException ex) {
			// A full disk was told of where it was met
		}
	}

}
