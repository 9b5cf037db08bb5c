package rimebook.entries;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Reads planned elements as typed or pasted, refusing what is no code. */
final class PlannedCodes {

	/** Far more than any programme has. */
	private static final int MOST = 40;

	private static final int LONGEST = 20;

	private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");

	private static final Pattern FORM = Pattern.compile("[A-Za-z]+\\d?(\\+[A-Za-z]+\\d?)?<{0,2}");

	private final RuleSets ruleSets;

	private final EventView event;

	PlannedCodes(RuleSets ruleSets, EventView event) {
		this.ruleSets = ruleSets;
		this.event = event;
	}

	/**
	 * Read them.
	 * @throws RuleViolationException naming the field {@code codes} and the element
	 */
	List<String> read(String typed) {
		String text = typed.strip();
		List<String> words = text.isEmpty() ? List.of() : List.of(BETWEEN.split(text));
		if (words.size() > MOST) {
			throw refused("too-many-elements", Sentence.of("entries.plan.too-many-elements", words.size(), MOST));
		}
		List<String> codes = new ArrayList<>();
		for (String word : words) {
			codes.add(read(word, codes.size() + 1));
		}
		return codes;
	}

	private String read(String word, int number) {
		if (word.length() > LONGEST || !FORM.matcher(word).matches()) {
			throw refused("code-malformed", Sentence.of("entries.plan.code-malformed", shortened(word), number));
		}
		if (!this.event.hasTechnicalPanel()) {
			return word;
		}
		return this.ruleSets.codeOf(this.event, word)
			.orElseThrow(() -> refused("unknown-code",
					Sentence.of("entries.plan.unknown-code", word, number, this.event.name())));
	}

	private static String shortened(String word) {
		return (word.length() > LONGEST) ? word.substring(0, LONGEST) + "…" : word;
	}

	private static RuleViolationException refused(String code, Sentence rest) {
		return RuleViolationException.ofField(code, "codes", rest);
	}

}
