package rimebook.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Arguments taken apart: options with a value ({@code --name value} or
 * {@code --name=value}), switches without one, each at most once, and the rest.
 */
final class Arguments {

	private final Map<String, String> options = new LinkedHashMap<>();

	private final List<String> rest = new ArrayList<>();

	/**
	 * Take arguments apart.
	 * @param args as typed
	 * @param known names of the options, with their dashes
	 * @throws UsageException for an unknown option, one without value, or one given twice
	 */
	Arguments(List<String> args, Set<String> known) {
		this(args, known, "");
	}

	/**
	 * Take arguments apart, where one of them decides which others there are.
	 * @param beside said behind an unknown option
	 */
	Arguments(List<String> args, Set<String> known, String beside) {
		this(args, known, Set.of(), beside);
	}

	/**
	 * Take arguments apart, where some options have no value.
	 * @param switches names of the options without a value
	 */
	Arguments(List<String> args, Set<String> known, Set<String> switches, String beside) {
		for (int i = 0; i < args.size(); i++) {
			String argument = args.get(i);
			int sign = argument.indexOf('=');
			String name = (sign > 0) ? argument.substring(0, sign) : argument;
			if (!argument.startsWith("-")) {
				this.rest.add(argument);
			}
			else if (switches.contains(argument)) {
				add(name, "");
			}
			else if (!known.contains(name)) {
				throw new UsageException("there is no option '" + name + "'" + beside);
			}
			else {
				add(name, (sign > 0) ? argument.substring(sign + 1) : valueAt(args, ++i, name));
			}
		}
	}

	private static String valueAt(List<String> args, int index, String name) {
		if (index >= args.size()) {
			throw new UsageException("option '" + name + "' needs a value");
		}
		return args.get(index);
	}

	private void add(String name, String value) {
		if (this.options.put(name, value) != null) {
			throw new UsageException("option '" + name + "' is given twice");
		}
	}

	Optional<String> option(String name) {
		return Optional.ofNullable(this.options.get(name));
	}

	boolean has(String name) {
		return this.options.containsKey(name);
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
		unwanted.stream().sorted().filter(this.options::containsKey).findFirst().ifPresent((name) -> {
			throw new UsageException("option '" + name + "' does not go with " + beside);
		});
	}

	List<String> rest() {
		return List.copyOf(this.rest);
	}

}
