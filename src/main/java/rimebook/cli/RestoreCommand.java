package rimebook.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;

import picocli.CommandLine.Model.CommandSpec;

import rimebook.archive.ArchiveCheck;
import rimebook.archive.ArchiveDatabase;
import rimebook.archive.ArchiveRefusal;
import rimebook.archive.ArchiveRestore;
import rimebook.archive.DatabaseBeside;
import rimebook.archive.NoRoom;

/** Makes the competition of an archive again in an empty database. */
final class RestoreCommand implements SubCommand {

	private static final String SYNOPSIS = "java -jar rimebook.jar restore FILE.zip [options]";

	private static final String DESCRIPTION = """
			Checks the archive as verify-archive does and makes the same competition again in an empty
			database, of H2 or PostgreSQL, whichever it came from. A database of H2 that is not there is
			made; one that holds anything is left as it is. Either all of it is there afterwards or
			nothing: status 0 says that it is. A file of H2 is made beside its place and gets its name
			at the end; a command that was killed leaves a file that ends in -being-restored.mv.db,
			which the next attempt replaces.

			Passwords and codes of seats are in no archive. People are there, closed: start the service,
			open the set-up link that it prints, make an administrator, and open their accounts with new
			passwords.
			""";

	@Override
	public String name() {
		return "restore";
	}

	@Override
	public CommandSpec spec() {
		return Options.command(name(), SYNOPSIS, "makes a competition again from its archive", DESCRIPTION)
			.addArgGroup(Options.group("Without options it fills the database that the service would use.",
					Options.value("--url", "URL", "JDBC address, or SPRING_DATASOURCE_URL"),
					Options.value("--user", "NAME", "or SPRING_DATASOURCE_USERNAME"),
					Options.value("--password", "PASSWORD", "or SPRING_DATASOURCE_PASSWORD, which others cannot see"),
					Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		typed.within(Set.of("--url", "--user", "--password"), "");
		if (typed.rest().size() != 1) {
			throw new UsageException("it takes one file");
		}
		try {
			return restore(Path.of(typed.rest().get(0)), DatabaseAddress.of(typed, System.getenv(), Path.of("")), out);
		}
		catch (InputException ex) {
			err.print(ex.getMessage() + "\n");
		}
		catch (ArchiveRefusal ex) {
			err.print(ex.sentence() + " Nothing was restored.\n");
		}
		return CommandLine.REFUSED;
	}

	private static int restore(Path file, DatabaseAddress address, PrintStream out) {
		try {
			ArchiveCheck.Finding finding = ArchiveCheck.checkFiles(file);
			if (!finding.isGood()) {
				finding.shown().forEach((fault) -> out.print("NOT GOOD: " + fault + "\n"));
				out.print("Nothing was restored.\n");
				return CommandLine.BROKEN;
			}
			requireEmpty(address);
			restoreInto(address, file);
			out.print("Restored into " + address.shown() + "\n");
			return CommandLine.DONE;
		}
		catch (IOException ex) {
			throw InputException.of(file.toString(), "cannot be read: " + ex.getMessage() + ". Nothing was restored.");
		}
	}

	/** Before anything is changed there, the tables among it. */
	private static void requireEmpty(DatabaseAddress address) {
		try (Connection connection = address.open()) {
			ArchiveRestore.requireEmpty(connection);
		}
		catch (SQLException ex) {
			if (!DatabaseAnswer.isNotThere(ex)) {
				throw InputException.of(address.shown(), DatabaseAnswer.why(ex, "") + " Nothing was restored.");
			}
		}
	}

	private static void restoreInto(DatabaseAddress address, Path file) throws IOException {
		Optional<DatabaseBeside> beside = DatabaseBeside.of(address.url());
		if (beside.isEmpty()) {
			prepareAndRestore(address, file);
			return;
		}
		try (DatabaseBeside made = beside.get()) {
			DatabaseAddress there = new DatabaseAddress(made.url(), address.user(), address.password());
			prepareAndRestore(there, file);
			requireRestored(there, file);
			requireEmpty(address);
			made.takePlace();
		}
	}

	/** What fails once all is committed is no reason to say that nothing was restored. */
	private static void prepareAndRestore(DatabaseAddress address, Path file) throws IOException {
		ArchiveDatabase.prepare(address.url(), address.user(), address.password());
		boolean committed = false;
		try (Connection connection = address.open()) {
			ArchiveRestore.restore(connection, file);
			committed = true;
		}
		catch (SQLException ex) {
			if (!committed) {
				throw cannotBeWritten(address, ex);
			}
		}
	}

	private static void requireRestored(DatabaseAddress address, Path file) throws IOException {
		try (Connection connection = address.open()) {
			ArchiveRestore.requireRestored(connection, file);
		}
		catch (SQLException ex) {
			throw cannotBeWritten(address, ex);
		}
	}

	private static InputException cannotBeWritten(DatabaseAddress address, SQLException ex) {
		return InputException.of(address.shown(),
				"cannot be written: " + NoRoom.or(ex, String.valueOf(ex.getMessage())) + ". Nothing was restored.");
	}

}
