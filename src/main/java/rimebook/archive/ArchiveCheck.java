package rimebook.archive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipException;

import rimebook.audit.RecordCopy;
import rimebook.audit.RecordFinding;

/**
 * Checks an archive without a database of its own: every byte, every file, the chain of
 * the record, the fingerprints, and that every place follows from the marks. What the
 * record tells of cards, corrections and signatures is compared by restoring into memory.
 */
public final class ArchiveCheck {

	private final ArchiveFile archive;

	private final List<String> faults = new ArrayList<>();

	private final List<String> found = new ArrayList<>();

	private final Map<String, List<TableRow>> rows = new HashMap<>();

	private ArchiveCheck(ArchiveFile archive) {
		this.archive = archive;
	}

	/**
	 * Check everything.
	 * @throws IOException if the file cannot be read at all
	 */
	public static Finding check(Path path) throws IOException {
		return check(path, true);
	}

	/**
	 * Check what can be checked without restoring.
	 * @throws IOException if the file cannot be read at all
	 */
	public static Finding checkFiles(Path path) throws IOException {
		return check(path, false);
	}

	private static Finding check(Path path, boolean stored) throws IOException {
		try (ArchiveFile archive = ArchiveFile.open(path)) {
			ArchiveCheck check = new ArchiveCheck(archive);
			check.found
				.add("The file is as it was written: " + archive.names().size() + " files, each as the manifest says.");
			check.run(stored);
			return new Finding(check.found, check.faults);
		}
		catch (ArchiveRefusal ex) {
			return new Finding(List.of(), List.of(ex.sentence()));
		}
		catch (UncheckedIOException ex) {
			throw ex.getCause();
		}
		catch (RuntimeException ex) {
			return new Finding(List.of(), List.of("What is in the archive cannot be read: " + ex.getMessage() + "."));
		}
		catch (ZipException ex) {
			return new Finding(List.of(),
					List.of("The file is no ZIP file as it was written: " + ex.getMessage() + "."));
		}
	}

	private void run(boolean stored) throws IOException {
		record();
		fingerprints();
		if (this.faults.isEmpty()) {
			Standings standings = Standings.of(this::rows, this::text);
			places(standings);
			readers(standings);
		}
		if (this.faults.isEmpty() && stored && this.archive.variant() == Variant.WHOLE) {
			stored();
		}
	}

	private void record() throws IOException {
		RecordFinding chain = RecordCopy
			.check(new BufferedReader(new StringReader(this.archive.text(ArchiveFile.RECORD))));
		TableRow about = this.archive.about();
		boolean end = Objects.toString(about.get("recordHead")).equals(chain.head())
				&& Objects.toString(about.get("recordLines")).equals(Long.toString(chain.lines()));
		if (!chain.isWhole()) {
			this.faults.add(chain.sentence());
		}
		else if (!end) {
			this.faults.add("The record does not end where the archive says.");
		}
		else {
			this.found.add(chain.sentence() + ".");
		}
	}

	private void fingerprints() throws IOException {
		List<TableRow> versions = rows("result_version");
		int hidden = 0;
		for (TableRow version : versions) {
			String file = Standings.text(version, "body");
			if (this.archive.variant() == Variant.PUBLIC && file.endsWith(ArchiveFile.WITHOUT_NAMES)) {
				hidden++;
			}
			else if (!Sha256.of(this.archive.bytes(file)).equals(Standings.text(version, "fingerprint"))) {
				this.faults
					.add("The version in " + file + " does not have the fingerprint under which it was published.");
			}
		}
		this.found.add((versions.size() - hidden) + " published versions have their fingerprints."
				+ ((hidden == 0) ? "" : " " + hidden + " are without the names of their panels, which their "
						+ "fingerprints cover: compare these with the whole archive."));
	}

	private void places(Standings standings) throws IOException {
		Retabulation.Finding places = Retabulation.of(standings,
				(this.archive.variant() == Variant.WHOLE) ? this::rows : null);
		this.faults.addAll(places.faults());
		this.found.add(places.places() + " rows of standings follow from the marks."
				+ ((places.unknown() == 0) ? "" : " " + places.unknown()
						+ " versions are judged in a way that this program cannot tabulate; they were not."));
	}

	/** What people look at has to say what the data say. */
	private void readers(Standings standings) throws IOException {
		if (!Integer.valueOf(ArchiveFile.EDITION).equals(this.archive.about().get("edition"))) {
			this.found.add("The page and the tables for readers are of another edition than this program's; they were "
					+ "not compared with the data.");
			return;
		}
		ResultFiles.of(standings, this.archive.variant(), (name, content) -> {
			if (!content.equals(this.archive.text(name))) {
				this.faults.add("The file " + name + " does not say what the data say.");
			}
		});
		this.found.add("The page and the tables for readers say what the data say.");
	}

	private void stored() {
		try {
			ArchiveDatabase.inMemory((connection) -> {
				try {
					ArchiveRestore.put(connection, this.archive);
				}
				catch (IOException ex) {
					throw new UncheckedIOException(ex);
				}
			});
			this.found.add("Cards, corrections and signatures are what the record tells.");
		}
		catch (ArchiveRefusal ex) {
			this.faults.add(ex.sentence());
		}
		catch (SQLException | RuntimeException ex) {
			this.faults.add("The archive cannot be restored: " + ex.getMessage() + ".");
		}
	}

	private List<TableRow> rows(String table) {
		return this.rows.computeIfAbsent(table, (name) -> {
			try {
				return this.archive.rows(name);
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		});
	}

	private String text(String file) {
		try {
			return this.archive.text(file);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/**
	 * What was found.
	 *
	 * @param found what is good, a sentence each
	 * @param faults what is not, a sentence each
	 */
	public record Finding(List<String> found, List<String> faults) {

		private static final int SHOWN = 20;

		public Finding {
			found = List.copyOf(found);
			faults = List.copyOf(faults);
		}

		/** Tell whether the archive is as it was written and holds together. */
		public boolean isGood() {
			return this.faults.isEmpty();
		}

		/** The first faults, to be shown. */
		public List<String> shown() {
			return this.faults.subList(0, Math.min(SHOWN, this.faults.size()));
		}

	}

}
