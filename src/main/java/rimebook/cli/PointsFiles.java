package rimebook.cli;

import java.util.Optional;
import java.util.Set;

/** Names of the files of a segment under points judging. */
record PointsFiles(String elements, String components, Optional<String> deductions, String values) {

	static final String ELEMENTS = "--elements";

	static final String COMPONENTS = "--components";

	static final String DEDUCTIONS = "--deductions";

	static final String VALUES = "--values";

	static final Set<String> OPTIONS = Set.of(ELEMENTS, COMPONENTS, DEDUCTIONS, VALUES);

	static PointsFiles of(Arguments arguments) {
		return new PointsFiles(needed(arguments, ELEMENTS), needed(arguments, COMPONENTS), arguments.option(DEDUCTIONS),
				needed(arguments, VALUES));
	}

	private static String needed(Arguments arguments, String option) {
		return arguments.option(option)
			.orElseThrow(() -> new UsageException("option '" + option + "' is missing beside '--method points'"));
	}

}
