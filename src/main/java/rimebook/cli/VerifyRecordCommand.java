package rimebook.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

import rimebook.audit.Anchor;
import rimebook.audit.AnchorCheck;
import rimebook.audit.AnchorFile;
import rimebook.audit.ChainCheck;
import rimebook.audit.ClockCheck;
import rimebook.audit.RecordFinding;
import rimebook.audit.StoredCheck;

/** Follows the record and compares what is stored, without starting the service. */
final class VerifyRecordCommand implements SubCommand {

	private static final String EXPECT_HEAD = "--expect-head";

	private static final String ANCHORS = "--anchors";

	private static final String PUBLIC_KEY = "--public-key";

	private static final String SYNOPSIS = "java -jar rimebook.jar verify-record [options]";

	private static final String DESCRIPTION = """
			Reads the record from its first line to its last and says whether every line follows from
			the one before it; then compares what is stored with what the lines tell of it: the
			SHA-256 of the body of each published version, who signed, which segments are cancelled,
			and what lines attest: competitions, events, segments, clubs, teams, entries, planned
			elements, officials, seats, draws, rulings, how each performance went, its clock, cards,
			called elements, deductions and remarks, changes of the panel, postings, protests,
			corrections, accounts and their roles. Changes nothing. Status 0: all of it agrees;
			1: it does not, and the answer says where; 2: it cannot be read.

			What this proves: nobody changed a line, or what is compared, without writing every later
			line anew. What it does not: whoever can write to the database can do just that, and it
			shows only against what was kept elsewhere: one head, as it stands on paper, with
			--expect-head, or many lines with --anchors. Tablets and followers' pages keep anchors and
			give them out as a file (page /record-seen of their browser); the notes at the second place
			of rimebook.copy.folder are anchors, too. An anchor that fits proves that its line and all
			lines before it are as they were; what came after the newest one is covered by none. Lines
			that were lost when the service started from a copy are told as lost: their anchors neither
			prove nor contradict anything. With --public-key only anchors count that were signed by that
			key: others than those who have the secret key, the service among them, cannot make one up.
			What was last acted on before lines attested it is counted and not compared. Not compared at
			all: passwords, seat codes and sessions, whether an account is shut, who is on the ice now,
			and a performance that nobody called yet.

			An H2 file can be read while no Rimebook runs on it; the page "Record" of a running one
			has a button that does the same.
			""";

	private static final String NOTHING_KEPT = """
			Nothing that was kept elsewhere was compared: written anew as a whole, the record would look the same.
			""";

	private static final Set<String> ALLOWED = Set.of("--url", "--user", "--password", EXPECT_HEAD, ANCHORS,
			PUBLIC_KEY);

	@Override
	public String name() {
		return "verify-record";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), SYNOPSIS, "tells whether the record is as it was written, and what is stored as it tells",
					DESCRIPTION)
			.addArgGroup(Options.group("Without options it reads the database that the service would use.",
					Options.value(EXPECT_HEAD, "HEAD",
							"the head as it was kept, or its first 12 digits or more; it has to be that of a line, "
									+ "which may have others after it"),
					Options.value(ANCHORS, "FILE",
							"lines that were kept elsewhere, each \"line NUMBER DIGEST\" and perhaps more, as "
									+ "devices give them out; what stands behind # is passed over. Of a folder, "
									+ "such as the second place, all files that end in .txt"),
					Options.value(PUBLIC_KEY, "FILE", "the public key by which all of these have to be signed"),
					Options.value("--url", "URL", "JDBC address, or SPRING_DATASOURCE_URL"),
					Options.value("--user", "NAME", "or SPRING_DATASOURCE_USERNAME"),
					Options.value("--password", "PASSWORD", "or SPRING_DATASOURCE_PASSWORD, which others cannot see"),
					Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		try {
			check(typed);
			Kept kept = Kept.of(typed);
			return check(DatabaseAddress.of(typed, System.getenv(), Path.of("")), kept, out) ? CommandLine.DONE
					: CommandLine.BROKEN;
		}
		catch (InputException ex) {
			err.print(ex.getMessage() + "\n");
			return CommandLine.REFUSED;
		}
	}

	private static void check(Arguments typed) {
		typed.within(ALLOWED, "");
		if (!typed.rest().isEmpty()) {
			throw new UsageException("there is nothing to do with '" + typed.rest().get(0) + "'");
		}
	}

	/** As it was kept, with the dots of a shortened one; empty if none is expected. */
	private static String head(Arguments typed) {
		String head = typed.option(EXPECT_HEAD)
			.orElse("")
			.strip()
			.toLowerCase(Locale.ROOT)
			.replaceAll("(…|\\.{3})$", "");
		if (!head.isEmpty() && !ChainCheck.ExpectedHead.isOne(head)) {
			throw new UsageException("the option '" + EXPECT_HEAD
					+ "' takes a head of the record or its first digits, 12 to 64 of 0-9 and a-f");
		}
		return head;
	}

	private static boolean check(DatabaseAddress address, Kept kept, PrintStream out) {
		try (Connection connection = address.open()) {
			RecordFinding chain = ChainCheck.check(connection);
			out.print(chain.sentence() + "\n");
			boolean fits = areAnchored(connection, kept, chain, out);
			boolean whole = chain.isWhole()
					&& isExpected(connection, kept.head(), chain, out) & isStored(connection, out);
			ClockCheck.check(connection).forEach((note) -> out.print(note + "\n"));
			out.print((chain.isWhole() && kept.isNothing()) ? NOTHING_KEPT : "");
			return whole && fits;
		}
		catch (SQLException ex) {
			throw InputException.of(address.shown(),
					DatabaseAnswer.why(ex, ", or press \"Check the record\" on its page /desk/record"));
		}
	}

	private static boolean areAnchored(Connection connection, Kept kept, RecordFinding chain, PrintStream out)
			throws SQLException {
		if (kept.anchors() == null) {
			return true;
		}
		try {
			AnchorCheck.Finding finding = AnchorCheck.check(connection, kept.anchors(), chain, kept.publicKey());
			out.print(finding.sentence() + "\n");
			finding.faults().forEach((fault) -> out.print("  " + fault + "\n"));
			finding.notes().forEach((note) -> out.print("  " + note + "\n"));
			return finding.agrees();
		}
		catch (IOException ex) {
			throw InputException.of(PUBLIC_KEY, String.valueOf(ex.getMessage()));
		}
	}

	private static boolean isExpected(Connection connection, String head, RecordFinding chain, PrintStream out)
			throws SQLException {
		if (head.isEmpty()) {
			return true;
		}
		ChainCheck.ExpectedHead expected = ChainCheck.ExpectedHead.find(connection, head, chain);
		out.print(expected.sentence() + "\n");
		return expected.isFound();
	}

	private static boolean isStored(Connection connection, PrintStream out) throws SQLException {
		if (!StoredCheck.isPossible(connection)) {
			out.print("What is stored was not compared: this version of Rimebook has not opened the database yet.\n");
			return true;
		}
		StoredCheck.Finding stored = StoredCheck.check(connection);
		out.print(stored.sentence() + "\n");
		stored.shown().forEach((fault) -> out.print("  " + fault + "\n"));
		return stored.agrees();
	}

	/**
	 * What was kept elsewhere.
	 *
	 * @param head as it stands on paper, empty if none is expected
	 * @param anchors {@code null} if no file was named
	 * @param publicKey as PEM, empty if signatures are not to be checked
	 */
	private record Kept(String head, @Nullable List<Anchor> anchors, String publicKey) {

		static Kept of(Arguments typed) {
			String place = typed.option(ANCHORS).orElse("");
			List<Anchor> anchors = place.isEmpty() ? null
					: files(place).stream().flatMap((file) -> anchors(file).stream()).toList();
			String key = typed.option(PUBLIC_KEY).orElse("");
			return new Kept(VerifyRecordCommand.head(typed), anchors, key.isEmpty() ? "" : text(key));
		}

		/** Tell whether the record is compared with itself only. */
		boolean isNothing() {
			return this.head.isEmpty() && this.anchors == null;
		}

		/** A second place has many notes, and each is one. */
		private static List<String> files(String place) {
			try {
				if (!Files.isDirectory(Path.of(place))) {
					return List.of(place);
				}
				try (Stream<Path> files = Files.list(Path.of(place))) {
					return files.map(Path::toString).filter((name) -> name.endsWith(".txt")).sorted().toList();
				}
			}
			catch (IOException | InvalidPathException ex) {
				throw InputException.of(place, "cannot be read.");
			}
		}

		private static List<Anchor> anchors(String file) {
			AnchorFile read = AnchorFile.read(text(file));
			if (!read.unreadable().isEmpty()) {
				throw InputException.of(file, "line " + read.unreadable().get(0)
						+ " is no anchor; expected \"line 1234\" and 12 to 64 of 0-9 and a-f.");
			}
			return read.anchors();
		}

		private static String text(String file) {
			try {
				return Files.readString(Path.of(file));
			}
			catch (IOException | InvalidPathException ex) {
				throw InputException.of(file, "cannot be read.");
			}
		}

	}

}
