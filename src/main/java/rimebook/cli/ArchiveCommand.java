package rimebook.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;

import picocli.CommandLine.Model.CommandSpec;

import rimebook.archive.ArchiveRefusal;
import rimebook.archive.ArchiveWriting;
import rimebook.archive.DocumentsAside;
import rimebook.archive.NoRoom;
import rimebook.archive.Variant;

/** Writes the archive of a competition, without starting the service. */
final class ArchiveCommand implements SubCommand {

	private static final String PUBLIC = "--public";

	private static final String BARE = "--without-documents";

	private static final String SYNOPSIS = "java -jar rimebook.jar archive COMPETITION FILE.zip [options]";

	private static final String DESCRIPTION = """
			Writes one ZIP file with everything of the competition: data as CSV and JSON, every
			published version, the record, the documents that are printed, a page that shows every
			result in a browser, and a program of Python that checks it. README.txt inside describes
			all of it. COMPETITION is its name in addresses, as in /competitions/NAME.

			The file gets its name once it is whole and on the disk; a command that was stopped leaves
			at most a file that ends in .part. Passwords and codes of seats are in no archive.

			The database is only read. One of PostgreSQL can be read while a Rimebook runs on it, a
			file of H2 while none does; a running one saves archives itself, on the competition's page.
			""";

	private final Class<?> service;

	/**
	 * @param service the class that the service is started by
	 */
	ArchiveCommand(Class<?> service) {
		this.service = service;
	}

	@Override
	public String name() {
		return "archive";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), SYNOPSIS, "writes a competition into one file that anybody can check", DESCRIPTION)
			.addArgGroup(Options.group("Without options it reads the database that the service would use.",
					Options.flag(PUBLIC, "leaves personal data out; such an archive can be checked but not restored"),
					Options.flag(BARE, "leaves documents out, which is quicker"),
					Options.value("--url", "URL", "JDBC address, or SPRING_DATASOURCE_URL"),
					Options.value("--user", "NAME", "or SPRING_DATASOURCE_USERNAME"),
					Options.value("--password", "PASSWORD", "or SPRING_DATASOURCE_PASSWORD, which others cannot see"),
					Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		typed.within(Set.of("--url", "--user", "--password", PUBLIC, BARE), "");
		if (typed.rest().size() != 2) {
			throw new UsageException("it takes a competition and a file");
		}
		Path file = Path.of(typed.rest().get(1));
		try {
			DatabaseAddress address = DatabaseAddress.of(typed, System.getenv(), Path.of(""));
			if (typed.has(BARE)) {
				write(address, order(typed), file);
			}
			else {
				writeWithDocuments(address, order(typed), file);
			}
			out.print("Written: " + file + "\n");
			return CommandLine.DONE;
		}
		catch (InputException ex) {
			err.print(ex.getMessage() + "\n");
		}
		catch (ArchiveRefusal ex) {
			err.print(ex.sentence() + "\n");
		}
		return CommandLine.REFUSED;
	}

	private static ArchiveWriting.Order order(Arguments typed) {
		return new ArchiveWriting.Order(typed.rest().get(0), typed.has(PUBLIC) ? Variant.PUBLIC : Variant.WHOLE,
				Instant.now().truncatedTo(ChronoUnit.MILLIS), List.of());
	}

	/** A file system says which file and at times why. */
	private static String why(IOException failed) {
		return (failed instanceof NoSuchFileException) ? "there is no such folder"
				: String.valueOf(failed.getMessage());
	}

	/**
	 * Write the archive of a competition without documents; what fails is said for
	 * people.
	 */
	static void write(DatabaseAddress address, ArchiveWriting.Order order, Path file) {
		write(address, (connection) -> ArchiveWriting.write(connection, order, file, ArchiveWriting.Progress.UNSEEN),
				file);
	}

	private void writeWithDocuments(DatabaseAddress address, ArchiveWriting.Order order, Path file) {
		write(address, (connection) -> {
			try (DocumentsAside documents = new DocumentsAside(this.service, address.existing(), address.user(),
					address.password())) {
				ArchiveWriting.write(connection, documents.addedTo(order, connection), file,
						ArchiveWriting.Progress.UNSEEN);
			}
		}, file);
	}

	private static void write(DatabaseAddress address, Writing writing, Path file) {
		try (Connection connection = address.open()) {
			writing.from(connection);
		}
		catch (SQLException ex) {
			throw InputException.of(address.shown(),
					DatabaseAnswer.why(ex, ", or save the archive on its page of the competition"));
		}
		catch (IOException ex) {
			throw InputException.of(file.toString(),
					"cannot be written: " + NoRoom.or(ex, why(ex)) + ". There is no archive.");
		}
	}

	/** Writes an archive from a database. */
	private interface Writing {

		void from(Connection connection) throws SQLException, IOException;

	}

}
