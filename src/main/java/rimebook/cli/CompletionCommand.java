package rimebook.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Set;

import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;

/** Writes what a shell needs to complete commands and options. */
final class CompletionCommand implements SubCommand {

	private static final String DESCRIPTION = """
			For Bash and Zsh, where the jar is called by the word rimebook:
			  alias rimebook='java -jar /where/it/is/rimebook.jar'
			  source <(rimebook completion)
			""";

	private final List<SubCommand> others;

	CompletionCommand(List<SubCommand> others) {
		this.others = others;
	}

	@Override
	public String name() {
		return "completion";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), "java -jar rimebook.jar completion",
					"a script by which a shell completes commands and options", DESCRIPTION)
			.addArgGroup(Options.group("All:", Options.help()));
	}

	@Override
	public int run(Arguments typed, PrintStream out, PrintStream err) {
		typed.within(Set.of(), "");
		if (!typed.rest().isEmpty()) {
			throw new UsageException("there is nothing to do with '" + typed.rest().get(0) + "'");
		}
		CommandSpec jar = CommandSpec.create().name("rimebook");
		this.others.forEach((command) -> jar.addSubcommand(command.name(), command.spec()));
		jar.addSubcommand(name(), spec());
		out.print(AutoComplete.bash("rimebook", new picocli.CommandLine(jar)));
		return CommandLine.DONE;
	}

}
