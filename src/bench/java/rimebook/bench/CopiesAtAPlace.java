package rimebook.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;

import rimebook.audit.AnchorCheck;
import rimebook.audit.AnchorFile;
import rimebook.audit.ChainCheck;
import rimebook.audit.RecordFinding;
import rimebook.audit.StoredCheck;

/**
 * The copies at a second place, looked at by other code than that which makes them: one
 * that has a note must be the file that the note tells of, open as a database, and hold a
 * whole record that ends as the note tells.
 */
final class CopiesAtAPlace {

	private final String place;

	private String newest = "";

	private int whole;

	private int cut;

	CopiesAtAPlace(String place) {
		this.place = place;
	}

	/** Look at those that came since the last look. */
	List<String> faultsSinceTheLast() throws IOException {
		List<String> faults = new ArrayList<>();
		if (this.place.isEmpty()) {
			return faults;
		}
		List<String> names = names();
		for (String name : names) {
			if (name.endsWith(".zip.part") || name.endsWith(".zip") && !names.contains(noteOf(name))) {
				this.cut++;
			}
			else if (name.endsWith(".zip") && name.compareTo(this.newest) > 0) {
				check(name, faults);
				this.newest = name;
			}
		}
		return faults;
	}

	/** What was seen, in figures. */
	String sentence() {
		return this.place.isEmpty() ? "No copies were made"
				: "After kills %d copies counted as whole and were opened and verified; %d times a copy was cut off and counted as none"
					.formatted(this.whole, this.cut);
	}

	private List<String> names() throws IOException {
		try (Stream<Path> files = Files.list(Path.of(this.place))) {
			return files.map((file) -> file.getFileName().toString())
				.filter((name) -> name.startsWith("rimebook-2"))
				.sorted()
				.toList();
		}
	}

	private static String noteOf(String copy) {
		return copy.replaceFirst("zip$", "txt");
	}

	private void check(String name, List<String> faults) throws IOException {
		Path folder = Files.createTempDirectory("rimebook-look");
		Path database = folder.resolve("look.mv.db");
		try {
			String note = Files.readString(Path.of(this.place, noteOf(name)));
			Map<String, String> told = note.lines()
				.collect(Collectors.toMap((line) -> line.replaceFirst(": .*", ""), (line) -> line.replaceFirst(".*?: ", "")));
			byte[] bytes = Files.readAllBytes(Path.of(this.place, name));
			if (!HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)).equals(told.get("sha256"))) {
				faults.add(name + " is not the file that its note tells of");
				return;
			}
			try (InputStream file = Files.newInputStream(Path.of(this.place, name));
					ZipInputStream zip = new ZipInputStream(file)) {
				zip.getNextEntry();
				Files.copy(zip, database, StandardCopyOption.REPLACE_EXISTING);
			}
			try (Connection connection = DriverManager.getConnection(
					"jdbc:h2:file:" + folder.resolve("look") + ";IFEXISTS=TRUE;ACCESS_MODE_DATA=r", "rimebook", "")) {
				verify(connection, name, told, note, faults);
			}
		}
		catch (IOException | SQLException | NoSuchAlgorithmException ex) {
			faults.add(name + " counts as whole and cannot be read: " + ex);
		}
		finally {
			Files.deleteIfExists(database);
			Files.deleteIfExists(folder.resolve("look.trace.db"));
			Files.deleteIfExists(folder);
		}
	}

	private void verify(Connection connection, String name, Map<String, String> told, String note, List<String> faults)
			throws SQLException, IOException {
		RecordFinding chain = ChainCheck.check(connection);
		if (!chain.isWhole() || !chain.head().equals(told.get("record-head"))) {
			faults.add(name + ": " + chain.sentence());
		}
		StoredCheck.check(connection).shown().forEach((fault) -> faults.add(name + ": " + fault));
		if (!isAnchored(AnchorCheck.check(connection, AnchorFile.read(note).anchors(), chain, ""), chain)) {
			faults.add(name + ": its note has no anchor that fits");
		}
		this.whole++;
	}

	/** A record without a line has no anchor; every other needs one that fits. */
	private static boolean isAnchored(AnchorCheck.Finding anchors, RecordFinding chain) {
		return (chain.lines() == 0) ? anchors.faults().isEmpty() && anchors.fitting() == 0 : anchors.agrees();
	}

}
