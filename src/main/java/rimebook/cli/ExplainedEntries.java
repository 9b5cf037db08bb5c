package rimebook.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which entries are to be explained.
 *
 * @param entry the one
 * @param against the other of a pair
 */
record ExplainedEntries(String entry, Optional<String> against) {

	static final String ENTRY = "--entry";

	static final String AGAINST = "--against";

	static final Set<String> OPTIONS = Set.of(ENTRY, AGAINST);

	static ExplainedEntries of(Arguments arguments) {
		return new ExplainedEntries(
				arguments.option(ENTRY).orElseThrow(() -> new UsageException("option '--entry' is missing")),
				arguments.option(AGAINST));
	}

	List<String> all() {
		return Stream.concat(Stream.of(this.entry), this.against.stream()).toList();
	}

}
