package rimebook.entries;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Reads what a segment asks as typed, refusing what cannot be meant. */
final class RequiredWords {

	private static final int MOST_LINES = 40;

	private static final Pattern LINE = Pattern
		.compile("([A-Za-z]{1,20}(?:\\s*/\\s*[A-Za-z]{1,20}){0,9})\\s+(\\d{1,2})(?:\\s*-\\s*(\\d{1,2}))?");

	/** What the table of values has; empty where there is none. */
	private final Set<String> known;

	RequiredWords(RuleSets ruleSets, EventView event) {
		this.known = ruleSets.elementsOf(event);
	}

	/**
	 * Read the lines; empty ones count as lines and ask nothing.
	 * @throws RuleViolationException naming the field {@code lines} and the line
	 */
	List<RequiredList.Line> read(String typed) {
		List<String> rows = typed.lines().map(String::strip).toList();
		List<RequiredList.Line> lines = new ArrayList<>();
		Set<String> seen = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
		for (int i = 0; i < rows.size(); i++) {
			if (!rows.get(i).isEmpty()) {
				lines.add(line(rows.get(i), i + 1, seen));
			}
		}
		if (lines.size() > MOST_LINES) {
			throw refused("too-many-lines", Sentence.of("entries.required.too-many", lines.size(), MOST_LINES));
		}
		return lines;
	}

	private RequiredList.Line line(String row, int number, Set<String> seen) {
		Matcher parts = LINE.matcher(row);
		if (!parts.matches()) {
			throw refused("line-malformed", Sentence.of("entries.required.malformed", number));
		}
		int least = Integer.parseInt(parts.group(2));
		int most = (parts.group(3) != null) ? Integer.parseInt(parts.group(3)) : least;
		if (most < least) {
			throw refused("line-figures", Sentence.of("entries.required.figures", number));
		}
		List<String> signs = new ArrayList<>();
		for (String sign : parts.group(1).split("\\s*/\\s*")) {
			signs.add(known(sign, number));
			if (!seen.add(sign)) {
				throw refused("sign-twice", Sentence.of("entries.required.twice", sign, number));
			}
		}
		return new RequiredList.Line(signs, least, most);
	}

	private String known(String sign, int number) {
		if (this.known.isEmpty() || this.known.contains(sign)) {
			return sign;
		}
		return this.known.stream()
			.filter(sign::equalsIgnoreCase)
			.findFirst()
			.orElseThrow(() -> refused("sign-unknown", Sentence.of("entries.required.unknown",
					(sign.length() > 10) ? sign.substring(0, 10).toLowerCase(Locale.ROOT) + "…" : sign, number)));
	}

	private static RuleViolationException refused(String code, Sentence sentence) {
		return RuleViolationException.ofField(code, "lines", sentence);
	}

}
