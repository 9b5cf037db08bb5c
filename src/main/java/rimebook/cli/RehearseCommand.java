package rimebook.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;

import picocli.CommandLine.Model.CommandSpec;

import rimebook.archive.ArchiveCheck;
import rimebook.archive.ArchiveRefusal;
import rimebook.archive.ArchiveWriting;
import rimebook.archive.Variant;
import rimebook.rehearsal.RehearsalAtConsole;

/** Holds a rehearsal on a copy of a competition. */
final class RehearseCommand implements SubCommand {

	private static final String PORT = "--port";

	private static final String SYNOPSIS = "java -jar rimebook.jar rehearse COMPETITION|FILE.zip [options]";

	private static final String DESCRIPTION = """
			Starts a service on a copy of a competition, in which the crew rehearses with a simulated
			panel; every page and paper of it says so. COMPETITION is its name in addresses, FILE.zip
			the whole archive of one. The database or file is only read. When Enter is pressed, or the
			command is stopped, the service ends and everything of it is deleted.

			An H2 file can be read while no Rimebook runs on it; a running one begins rehearsals itself,
			on the page /desk/rehearsal.
			""";

	@Override
	public String name() {
		return "rehearse";
	}

	@Override
	public CommandSpec spec() {
		return Options.command(name(), SYNOPSIS, "holds a rehearsal on a copy of a competition", DESCRIPTION)
			.addArgGroup(Options.group("Without options it reads the database that the service would use.",
					Options.value(PORT, "PORT", "where it answers, or the next free one; else 8090"),
					Options.value("--url", "URL", "JDBC address, or SPRING_DATASOURCE_URL"),
					Options.value("--user", "NAME", "or SPRING_DATASOURCE_USERNAME"),
					Options.value("--password", "PASSWORD", "or SPRING_DATASOURCE_PASSWORD, which others cannot see"),
					Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		typed.within(Set.of("--url", "--user", "--password", PORT), "");
		if (typed.rest().size() != 1) {
			throw new UsageException("it takes a competition or a file");
		}
		try {
			String failure = RehearsalAtConsole.hold((file) -> copy(typed, file), port(typed), System.in, out);
			if (failure.isEmpty()) {
				return CommandLine.DONE;
			}
			err.print(failure + "\n");
		}
		catch (InputException ex) {
			err.print(ex.getMessage() + "\n");
		}
		catch (ArchiveRefusal ex) {
			err.print(ex.sentence() + "\n");
		}
		catch (IOException ex) {
			err.print("The rehearsal could not be held: " + ex.getMessage() + "\n");
		}
		return CommandLine.REFUSED;
	}

	private static int port(Arguments typed) {
		String port = typed.option(PORT).orElse("0");
		if (!port.matches("\\d{1,5}") || Integer.parseInt(port) > 65_000) {
			throw new UsageException("'" + port + "' is no port");
		}
		return Integer.parseInt(port);
	}

	private static void copy(Arguments typed, Path file) throws IOException {
		String named = typed.rest().get(0);
		if (!named.endsWith(".zip")) {
			ArchiveCommand.write(DatabaseAddress.of(typed, System.getenv(), Path.of("")), new ArchiveWriting.Order(
					named, Variant.WHOLE, Instant.now().truncatedTo(ChronoUnit.MILLIS), List.of()), file);
			return;
		}
		ArchiveCheck.Finding finding = ArchiveCheck.checkFiles(Path.of(named));
		if (!finding.isGood()) {
			throw InputException.of(named, "is not good: " + String.join(" ", finding.shown()));
		}
		Files.copy(Path.of(named), file);
	}

}
