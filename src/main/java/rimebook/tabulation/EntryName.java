package rimebook.tabulation;

import java.util.Map;

import rimebook.wording.Sentence;

/**
 * An entry in a refusal. The tabulation knows identities only; whoever knows what the
 * entries are called puts their names in place of these.
 */
public final class EntryName {

	private static final String FIRST = "tabulation.entry";

	private static final String WITHIN = "tabulation.of-entry";

	private EntryName() {
	}

	/**
	 * The entry at the beginning of a sentence.
	 * @param entry identifier
	 * @return its part of the sentence
	 */
	public static Sentence first(String entry) {
		return Sentence.of(FIRST, entry);
	}

	/**
	 * The entry in the middle of a sentence.
	 * @param entry identifier
	 * @return its part of the sentence
	 */
	public static Sentence within(String entry) {
		return Sentence.of(WITHIN, entry);
	}

	/**
	 * Say a refusal with the names of entries.
	 * @param refusal what the tabulation said
	 * @param names by identifier; an entry that has none keeps its identifier
	 * @return the same with names
	 */
	public static Sentence named(Sentence refusal, Map<String, String> names) {
		return refusal.replacing((part) -> {
			boolean entry = part.key().equals(FIRST) || part.key().equals(WITHIN);
			String name = entry ? names.get(part.arguments().get(0)) : null;
			return (name != null) ? Sentence.said(name) : part;
		});
	}

}
