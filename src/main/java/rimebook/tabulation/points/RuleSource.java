package rimebook.tabulation.points;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Where an item of a rule set comes from.
 *
 * @param provenance how well it is known
 * @param note title, number and year of the document, or what to look up; may be empty
 */
public record RuleSource(Provenance provenance, String note) {

	private static final Map<String, Provenance> WORDS = Arrays.stream(Provenance.values())
		.collect(Collectors.toMap(Provenance::words, Function.identity()));

	static RuleSource of(TextTable.Row row) {
		return new RuleSource(row.choice("provenance", WORDS), row.text("note"));
	}

	/**
	 * Return whether somebody has to look the item up before relying on it.
	 * @return {@code true} for what was written down from memory
	 */
	public boolean needsChecking() {
		return this.provenance == Provenance.FROM_MEMORY;
	}

	/**
	 * Write the remark that stands beside the item.
	 * @return for example "from memory: look it up in the Technical Rules"
	 */
	public String remark() {
		return this.provenance.words() + (this.note.isEmpty() ? "" : ": " + this.note);
	}

	/** How well an item of a rule set is known. */
	public enum Provenance {

		/** Stands in a published document, which the note names. */
		PUBLISHED("published"),

		/** Recomputed from published score sheets without exception. */
		RECOMPUTED("recomputed"),

		/** Common practice without a document. */
		PRACTICE("practice"),

		/** Written down from memory: look it up before relying on it. */
		FROM_MEMORY("from memory");

		private final String words;

		Provenance(String words) {
			this.words = words;
		}

		/**
		 * Return the word used in tables and messages.
		 * @return for example {@code from memory}
		 */
		public String words() {
			return this.words;
		}

	}

}
