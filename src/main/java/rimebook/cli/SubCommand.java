package rimebook.cli;

import java.io.PrintStream;

import picocli.CommandLine.Model.CommandSpec;

/** One command of the jar. */
interface SubCommand {

	/** The word that calls it. */
	String name();

	/** What it does and which options it has; a new description each time. */
	CommandSpec spec();

	/**
	 * Do it.
	 * @param typed the arguments behind the name
	 * @param out results only
	 * @param err notes and refusals
	 * @return {@link CommandLine#DONE}, {@link CommandLine#BROKEN} or
	 * {@link CommandLine#REFUSED}
	 * @throws UsageException for arguments that cannot be understood
	 */
	int run(Arguments typed, PrintStream out, PrintStream err);

}
