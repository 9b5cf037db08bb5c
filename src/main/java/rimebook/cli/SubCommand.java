package rimebook.cli;

import java.io.PrintStream;
import java.util.List;

/** One command of the jar. */
interface SubCommand {

	/** The word that calls it. */
	String name();

	/** What it does, in one line. */
	String summary();

	/** How it is used, which {@code --help} and {@code -h} print. */
	String usage();

	/**
	 * Do it.
	 * @param args the arguments behind the name
	 * @param out results only
	 * @param err notes and refusals
	 * @return {@link CommandLine#DONE}, {@link CommandLine#BROKEN} or
	 * {@link CommandLine#REFUSED}
	 */
	int run(List<String> args, PrintStream out, PrintStream err);

}
