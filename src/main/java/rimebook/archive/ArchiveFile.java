package rimebook.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads an archive. What was opened is as it was written. */
final class ArchiveFile implements AutoCloseable {

	/** The layout that is written now; it grows when an older reader would go wrong. */
	static final int LAYOUT = 1;

	/**
	 * What readers are given beside the data; it grows whenever that says something else.
	 */
	static final int EDITION = 1;

	/** How the file of a version ends from which the names of officials were taken. */
	static final String WITHOUT_NAMES = "-without-names.json";

	/** The file that says what the archive is. */
	static final String ABOUT = "archive.json";

	/** The file that describes the tables. */
	static final String SCHEMA = "schema.json";

	/** The file with the lines of the record. */
	static final String RECORD = "record/lines.jsonl";

	/** Much more than a file of a large competition has; no more of one is unpacked. */
	private static final int LARGEST = 1 << 27;

	/** How much all of it may be, unpacked. */
	private static final long LARGEST_OF_ALL = 1L << 32;

	/** What cannot lead out of the folder into which somebody unpacks it. */
	private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_.-]*(/[A-Za-z0-9_][A-Za-z0-9_.-]*)*");

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final Path path;

	private final ZipFile zip;

	private ArchiveFile(Path path, ZipFile zip) {
		this.path = path;
		this.zip = zip;
	}

	/**
	 * Open it.
	 * @throws ArchiveRefusal if it is not as it was written
	 * @throws IOException if it cannot be read
	 */
	static ArchiveFile open(Path path) throws IOException {
		checkSeal(path);
		ArchiveFile file = new ArchiveFile(path, new ZipFile(path.toFile(), StandardCharsets.UTF_8));
		try {
			file.checkNames();
			file.checkManifest();
			file.checkLayout();
			return file;
		}
		catch (IOException | RuntimeException ex) {
			file.close();
			throw ex;
		}
	}

	private static void checkSeal(Path path) throws IOException {
		try (FileChannel file = FileChannel.open(path)) {
			byte[] words = SealedZip.SEAL_WORDS.getBytes(StandardCharsets.US_ASCII);
			long content = file.size() - SealedZip.SEAL;
			if (content < words.length) {
				throw new ArchiveRefusal("The file is no archive of Rimebook, or was cut short.");
			}
			String end = ascii(file, content - words.length, words.length + SealedZip.SEAL);
			if (!end.startsWith(SealedZip.SEAL_WORDS)) {
				throw new ArchiveRefusal(
						"The file is no archive of Rimebook, or was cut short: it does not end as one.");
			}
			if (!end.substring(words.length).equals(Sha256.of(file, content))) {
				throw new ArchiveRefusal("The file is not as it was written: it does not fit the SHA-256 at its end.");
			}
		}
	}

	private static String ascii(FileChannel file, long at, int length) throws IOException {
		ByteBuffer bytes = ByteBuffer.allocate(length);
		while (bytes.hasRemaining()) {
			if (file.read(bytes, at + bytes.position()) < 0) {
				throw new IOException("The file became shorter while it was read");
			}
		}
		return new String(bytes.array(), StandardCharsets.ISO_8859_1);
	}

	/** Two files of one name would be one for this program and the other for the next. */
	private void checkNames() {
		Set<String> there = new TreeSet<>();
		for (String name : names()) {
			if (!NAME.matcher(name).matches()) {
				throw new ArchiveRefusal("The archive has a file that none of Rimebook has: '" + name + "'.");
			}
			if (!there.add(name)) {
				throw new ArchiveRefusal("The archive has two files " + name + ".");
			}
		}
	}

	private void checkManifest() throws IOException {
		Map<String, String> listed = new TreeMap<>();
		text(SealedZip.MANIFEST).lines().forEach((line) -> {
			String[] parts = line.split(" {2}", 2);
			if (parts.length < 2 || listed.put(parts[1], parts[0]) != null) {
				throw new ArchiveRefusal("The manifest has a line that is none: " + line);
			}
		});
		Set<String> there = new TreeSet<>(names());
		there.remove(SealedZip.MANIFEST);
		if (!there.equals(listed.keySet())) {
			throw new ArchiveRefusal(
					"The manifest lists other files than there are: " + differences(there, listed.keySet()) + ".");
		}
		long unpacked = 0;
		for (Map.Entry<String, String> one : listed.entrySet()) {
			byte[] content = bytes(one.getKey());
			unpacked += content.length;
			if (unpacked > LARGEST_OF_ALL) {
				throw new ArchiveRefusal("Unpacked the archive is larger than any of Rimebook.");
			}
			if (!Sha256.of(content).equals(one.getValue())) {
				throw new ArchiveRefusal("The file " + one.getKey() + " is not as the manifest says.");
			}
		}
	}

	private static String differences(Set<String> there, Set<String> listed) {
		List<String> different = new ArrayList<>();
		there.stream().filter((name) -> !listed.contains(name)).forEach(different::add);
		listed.stream().filter((name) -> !there.contains(name)).forEach(different::add);
		return String.join(", ", different.subList(0, Math.min(5, different.size())));
	}

	private void checkLayout() throws IOException {
		Object layout = about().get("layout");
		if (!(layout instanceof Integer number) || number < 1 || number > LAYOUT) {
			throw new ArchiveRefusal("The archive has the layout " + layout + "; this version of Rimebook reads 1 to "
					+ LAYOUT + ". Take a newer one.");
		}
	}

	/** The names of all files inside, in their order. */
	List<String> names() {
		return this.zip.stream().map(ZipEntry::getName).toList();
	}

	boolean has(String name) {
		return this.zip.getEntry(name) != null;
	}

	/** What a file claims of its length is not believed. */
	byte[] bytes(String name) throws IOException {
		ZipEntry entry = this.zip.getEntry(name);
		if (entry == null) {
			throw new ArchiveRefusal("The file " + name + " is missing.");
		}
		try (InputStream in = this.zip.getInputStream(entry)) {
			byte[] content = in.readNBytes(LARGEST);
			if (in.read() >= 0) {
				throw new ArchiveRefusal("The file " + name + " is larger than any of an archive.");
			}
			return content;
		}
	}

	String text(String name) throws IOException {
		return new String(bytes(name), StandardCharsets.UTF_8);
	}

	/** What the archive is. */
	TableRow about() throws IOException {
		return object(ABOUT);
	}

	/** How much of the competition it holds. */
	Variant variant() throws IOException {
		return Boolean.TRUE.equals(about().get("public")) ? Variant.PUBLIC : Variant.WHOLE;
	}

	/** The columns of each table that it holds, with what they are. */
	Map<String, Map<String, String>> schema() throws IOException {
		try {
			return JSON.readValue(text(SCHEMA), new TypeReference<LinkedHashMap<String, Map<String, String>>>() {
			});
		}
		catch (JacksonException ex) {
			throw new ArchiveRefusal("The file " + SCHEMA + " cannot be read.");
		}
	}

	private TableRow object(String name) throws IOException {
		try {
			return JSON.readValue(text(name), TableRow.class);
		}
		catch (JacksonException ex) {
			throw new ArchiveRefusal("The file " + name + " cannot be read.");
		}
	}

	/** The rows of a table, none where the archive lacks it. */
	List<TableRow> rows(String table) throws IOException {
		String name = "data/" + table + ".json";
		if (!has(name)) {
			return List.of();
		}
		try {
			return JSON.readValue(text(name), new TypeReference<List<TableRow>>() {
			});
		}
		catch (JacksonException ex) {
			throw new ArchiveRefusal("The file " + name + " cannot be read.");
		}
	}

	@Override
	public String toString() {
		return this.path.toString();
	}

	@Override
	public void close() throws IOException {
		this.zip.close();
	}

}
