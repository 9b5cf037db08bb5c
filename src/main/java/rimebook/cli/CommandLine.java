package rimebook.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The commands that the jar understands in place of starting the service. Commands write
 * UTF-8 and end with status 0 when they did what was asked, 1 when a check found
 * something broken, and 2 when the arguments or the input were refused; then nothing is
 * on standard output.
 */
public final class CommandLine {

	/** Status of a command that did what was asked. */
	static final int DONE = 0;

	/** Status of a check that found something broken. */
	static final int BROKEN = 1;

	/** Status of a command whose arguments or input were refused. */
	static final int REFUSED = 2;

	private static final List<String> HELP = List.of("--help", "-h", "help");

	private static final List<String> HELP_OPTIONS = List.of("--help", "-h");

	private static final String MEMORY = """
			there is not enough memory for this input. Give Java more, as in \
			java -Xmx2g -jar rimebook.jar, or split the file.
			""";

	private final List<SubCommand> commands;

	CommandLine(List<SubCommand> commands) {
		this.commands = commands;
	}

	/**
	 * Return the command line with every command of this jar.
	 * @param service the class that the service is started by
	 * @return the commands
	 */
	public static CommandLine ofThisJar(Class<?> service) {
		List<SubCommand> commands = List.of(new TabulateCommand(), new ExplainCommand(), new PossibleCommand(),
				new VerifyRecordCommand(), new RecordKeyCommand(), new ArchiveCommand(service),
				new VerifyArchiveCommand(), new RestoreCommand(), new RehearseCommand());
		return new CommandLine(Stream.concat(commands.stream(), Stream.of(new CompletionCommand(commands))).toList());
	}

	/**
	 * Tell whether arguments call a command. Arguments that begin with {@code --} are
	 * settings of the service, except {@code --help}.
	 * @param args the arguments of the jar
	 * @return {@code false} where the service is to be started
	 */
	public static boolean isCalledBy(String... args) {
		return args.length > 0 && (!args[0].startsWith("--") || HELP.contains(args[0]));
	}

	/**
	 * Run the command on the streams of this process.
	 * @param args name of the command and its arguments
	 * @return the exit status
	 */
	public int run(String... args) {
		try (PrintStream out = stream(FileDescriptor.out); PrintStream err = stream(FileDescriptor.err)) {
			return run(List.of(args), out, err);
		}
	}

	int run(List<String> args, PrintStream out, PrintStream err) {
		int status = command(args, out, err);
		if (out.checkError()) {
			err.print("rimebook: the answer could not be written whole; is the disk full, or was its reader closed?\n");
			return REFUSED;
		}
		return status;
	}

	private static PrintStream stream(FileDescriptor descriptor) {
		return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
	}

	private int command(List<String> args, PrintStream out, PrintStream err) {
		String name = args.get(0);
		if (HELP.contains(name)) {
			out.print(usage());
			return DONE;
		}
		for (SubCommand command : this.commands) {
			if (command.name().equals(name)) {
				return answer(command, args.subList(1, args.size()), out, err);
			}
		}
		err.print("rimebook: there is no command '" + name + "'\n" + usage());
		return REFUSED;
	}

	private static int answer(SubCommand command, List<String> args, PrintStream out, PrintStream err) {
		if (args.stream().anyMatch(HELP_OPTIONS::contains)) {
			out.print(usage(command.spec()));
			return DONE;
		}
		try {
			return command.run(Arguments.of(command.spec(), args), out, err);
		}
		catch (UsageException ex) {
			err.print("rimebook " + command.name() + ": " + ex.getMessage() + "\n" + usage(command.spec()));
		}
		catch (OutOfMemoryError ex) {
			err.print("rimebook " + command.name() + ": " + MEMORY);
		}
		return REFUSED;
	}

	private String usage() {
		CommandSpec jar = CommandSpec.create().name("rimebook");
		jar.usageMessage()
			.synopsisHeading("usage: ")
			.customSynopsis("java -jar rimebook.jar COMMAND [arguments]",
					"       java -jar rimebook.jar            starts the service")
			.commandListHeading("%ncommands:%n")
			.footer("", "COMMAND --help tells more.")
			.width(96);
		this.commands.forEach((command) -> jar.addSubcommand(command.name(), command.spec()));
		return usage(jar);
	}

	private static String usage(CommandSpec spec) {
		return new picocli.CommandLine(spec).getUsageMessage(Ansi.OFF).replace(System.lineSeparator(), "\n");
	}

}
