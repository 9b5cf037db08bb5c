package rimebook.cli;

import java.util.Map;

/** How a standing is printed. */
enum OutputFormat {

	/** Comma-separated, for other programs. */
	CSV,

	/** Aligned columns and sentences, for people. */
	TEXT;

	static final String OPTION = "--format";

	static OutputFormat of(Arguments arguments) {
		return arguments.choice(OPTION, Map.of("csv", CSV, "text", TEXT)).orElse(CSV);
	}

	String write(Table table) {
		return (this == CSV) ? table.csv() : table.text();
	}

}
