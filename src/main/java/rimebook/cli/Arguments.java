package rimebook.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * What was typed behind the name of a command: options, with a value
 * ({@code --name value} or {@code --name=value}) or without, each at most once, and the
 * rest.
 */
final class Arguments {

	private final ParseResult typed;

	private Arguments(ParseResult typed) {
		this.typed = typed;
	}

	/**
	 * Take arguments apart. Options that the command does not have are refused by
	 * {@link #within}, since one of the others may decide which there are.
	 * @throws UsageException for an option without value, or one given twice
	 */
	static Arguments of(CommandSpec command, List<String> args) {
		try {
			return new Arguments(new picocli.CommandLine(flat(command)).parseArgs(args.toArray(String[]::new)));
		}
		catch (OverwrittenOptionException ex) {
			throw new UsageException("option '" + name(ex.getOverwritten()) + "' is given twice");
		}
		catch (MissingParameterException ex) {
			throw new UsageException("option '" + name(ex.getMissing().get(0)) + "' needs a value");
		}
		catch (ParameterException ex) {
			throw new UsageException(String.valueOf(ex.getMessage()));
		}
	}

	/**
	 * Groups are for the help; within them picocli takes an option any number of times.
	 */
	private static CommandSpec flat(CommandSpec command) {
		CommandSpec flat = CommandSpec.create().name(command.name());
		command.options().forEach((option) -> flat.addOption(OptionSpec.builder(option).build()));
		command.positionalParameters()
			.forEach((files) -> flat.addPositional(PositionalParamSpec.builder(files).build()));
		flat.parser().unmatchedArgumentsAllowed(true).posixClusteredShortOptionsAllowed(false).expandAtFiles(false);
		return flat;
	}

	private static String name(ArgSpec option) {
		return ((OptionSpec) option).longestName();
	}

	/**
	 * These arguments, if there is none but those allowed here.
	 * @param allowed names of the options, with their dashes
	 * @param beside said behind another option
	 * @throws UsageException for another option
	 */
	Arguments within(Set<String> allowed, String beside) {
		this.typed.unmatched().stream().findFirst().ifPresent((argument) -> {
			throw unknown(argument.split("=", 2)[0], beside);
		});
		this.typed.matchedOptions()
			.stream()
			.map(OptionSpec::longestName)
			.filter((name) -> !allowed.contains(name))
			.findFirst()
			.ifPresent((name) -> {
				throw unknown(name, beside);
			});
		return this;
	}

	private static UsageException unknown(String name, String beside) {
		return new UsageException("there is no option '" + name + "'" + beside);
	}

	Optional<String> option(String name) {
		return has(name) ? Optional.ofNullable(this.typed.matchedOptionValue(name, null)) : Optional.empty();
	}

	boolean has(String name) {
		return this.typed.hasMatchedOption(name);
	}

	/** Return what the word given for an option stands for. */
	<T> Optional<T> choice(String name, Map<String, T> choices) {
		return option(name).map((word) -> {
			T chosen = choices.get(word);
			if (chosen == null) {
				throw new UsageException("option '" + name + "' is '" + word + "'; expected "
						+ String.join(" or ", choices.keySet().stream().sorted().toList()));
			}
			return chosen;
		});
	}

	/** Refuse options that mean nothing beside another one. */
	void without(Set<String> unwanted, String beside) {
		unwanted.stream().sorted().filter(this::has).findFirst().ifPresent((name) -> {
			throw new UsageException("option '" + name + "' does not go with " + beside);
		});
	}

	/** What is no option: names of files. */
	List<String> rest() {
		return this.typed.matchedPositionalValue(0, List.of());
	}

}
