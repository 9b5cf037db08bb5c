package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import rimebook.wording.Sentence;

/**
 * Puts a substitute in the place of a judge who cannot continue. The substitute has
 * marked everybody all along, and now his marks count for the whole segment: all marks of
 * the judge he replaces are taken out, those given before as well, and never are the two
 * mixed (from memory; no rule text was found).
 */
public final class SubstituteJudge {

	private SubstituteJudge() {
	}

	/**
	 * Replace a judge.
	 * @param entries the teams with the cards of the panel as drawn
	 * @param judge number of the judge who cannot continue, from 1, in the panel's order
	 * @param cards the substitute's card of each team, by identifier
	 * @return the teams with the cards that count
	 * @throws TabulationException {@code judge-out-of-range}: a team has no such judge;
	 * {@code substitute-incomplete}: a team with cards has none of the substitute
	 */
	public static List<EntryCards> inPlaceOf(List<EntryCards> entries, int judge, Map<String, CardMarks> cards) {
		Map<String, EntryCards> byName = new TreeMap<>();
		entries.forEach((entry) -> byName.putIfAbsent(entry.entry(), entry));
		byName.values().stream().filter((entry) -> !entry.cards().isEmpty()).forEach((entry) -> {
			check(entry, judge, cards);
		});
		return entries.stream()
			.map((entry) -> entry.cards().isEmpty() ? entry : replaced(entry, judge, cards))
			.toList();
	}

	private static void check(EntryCards entry, int judge, Map<String, CardMarks> cards) {
		if (judge < 1 || judge > entry.cards().size()) {
			throw TabulationException.refused("judge-out-of-range", Sentence.of("tabulation.judge-out-of-range",
					EntryName.first(entry.entry()), judge, entry.cards().size()));
		}
		if (!cards.containsKey(entry.entry())) {
			throw TabulationException.refused("substitute-incomplete",
					Sentence.of("tabulation.substitute-incomplete", EntryName.first(entry.entry())));
		}
	}

	private static EntryCards replaced(EntryCards entry, int judge, Map<String, CardMarks> cards) {
		List<CardMarks> counting = new ArrayList<>(entry.cards());
		counting.set(judge - 1, cards.get(entry.entry()));
		return new EntryCards(entry.entry(), entry.status(), counting);
	}

}
