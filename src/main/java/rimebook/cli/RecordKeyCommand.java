package rimebook.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import picocli.CommandLine.Model.CommandSpec;

import rimebook.audit.RecordKeyFiles;

/** Makes the key by which the service signs anchors of the record. */
final class RecordKeyCommand implements SubCommand {

	private static final String DESCRIPTION = """
			Writes FILE, which only its owner may read, and FILE.pub with the public key alone. Keep
			FILE where the database is not, such as on a stick or another disk, name it to the service
			(--rimebook.record.key=FILE, or RIMEBOOK_RECORD_KEY) and hand out FILE.pub before the
			first team skates: a key handed out afterwards proves nothing. Never overwrites a file.

			What a signature proves: the anchor comes from whoever had FILE. Who has only the database
			cannot make one. Who also has FILE can.
			""";

	@Override
	public String name() {
		return "record-key";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), "java -jar rimebook.jar record-key FILE", "makes a key that signs anchors of the record",
					DESCRIPTION)
			.addArgGroup(Options.group("All:", Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		if (typed.rest().size() != 1) {
			throw new UsageException("name one file for the key");
		}
		String file = typed.rest().get(0);
		try {
			out.print(RecordKeyFiles.make(Path.of(file)));
			return CommandLine.DONE;
		}
		catch (IOException | InvalidPathException ex) {
			err.print(file + ": cannot be written, or is there already.\n");
			return CommandLine.REFUSED;
		}
	}

}
