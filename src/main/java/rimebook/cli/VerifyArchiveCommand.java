package rimebook.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Set;

import picocli.CommandLine.Model.CommandSpec;

import rimebook.archive.ArchiveCheck;

/** Checks an archive, without database or service. */
final class VerifyArchiveCommand implements SubCommand {

	private static final String SYNOPSIS = "java -jar rimebook.jar verify-archive FILE.zip";

	private static final String DESCRIPTION = """
			Looks at every byte of the file, the hash of each file inside, the chain of the record, the
			fingerprint of each published version, and tabulates each of them again: every place has to
			follow from the marks. Then restores it into memory and compares cards, corrections and
			signatures with what the record tells. Status 0: all of it is good; 1: it is not, and the
			answer says what; 2: it cannot be read.

			What this proves: nobody changed anything without writing hashes and record anew. Whoever
			did that is found by a head of the record that was kept elsewhere, such as on a signed
			sheet: compare it with a line of record/lines.jsonl.
			""";

	@Override
	public String name() {
		return "verify-archive";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), SYNOPSIS, "tells whether an archive is as it was written and holds together", DESCRIPTION)
			.addArgGroup(Options.group("Options:", Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		typed.within(Set.of(), "");
		if (typed.rest().size() != 1) {
			throw new UsageException("it takes one file");
		}
		Path file = Path.of(typed.rest().get(0));
		try {
			ArchiveCheck.Finding finding = ArchiveCheck.check(file);
			finding.found().forEach((sentence) -> out.print(sentence + "\n"));
			finding.shown().forEach((fault) -> out.print("NOT GOOD: " + fault + "\n"));
			return finding.isGood() ? CommandLine.DONE : CommandLine.BROKEN;
		}
		catch (IOException ex) {
			err.print(file + ": cannot be read: " + ex.getMessage() + "\n");
			return CommandLine.REFUSED;
		}
	}

}
