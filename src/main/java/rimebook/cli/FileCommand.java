package rimebook.cli;

import java.io.PrintStream;

import rimebook.tabulation.TabulationException;

/** A command that makes an answer from files, or refuses. */
abstract class FileCommand implements SubCommand {

	/**
	 * Make the answer.
	 * @param typed the arguments behind the name
	 * @throws UsageException for arguments that cannot be understood
	 * @throws InputException for a file that cannot be used
	 * @throws TabulationException for figures that cannot be tabulated
	 */
	abstract Tabulated answer(Arguments typed);

	@Override
	public final int run(Arguments typed, PrintStream out, PrintStream err) {
		try {
			Tabulated answer = answer(typed);
			answer.notes().forEach((note) -> err.print("note: " + note + "\n"));
			out.print(answer.text());
			return CommandLine.DONE;
		}
		catch (InputException | TabulationException ex) {
			err.print(ex.getMessage() + "\n");
			return CommandLine.REFUSED;
		}
	}

}
