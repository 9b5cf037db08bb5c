package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.PlacementRules;

/**
 * Goes through everything that the teams still to skate may receive, by really writing
 * cards: of all cards that compare alike with the others one, or where two teams are to
 * skate two, stand for all.
 */
final class EveryOutcome {

	private final PlacementRules rules;

	private final List<EntryCards> marked;

	private final int judges;

	private final List<CardMarks> scale = new ArrayList<>();

	EveryOutcome(PlacementRules rules, List<EntryCards> marked, int judges) {
		this.rules = rules;
		this.marked = marked;
		this.judges = judges;
		int lowest = (rules.zeroMark() == PlacementRules.ZeroMark.REFUSE) ? 10 : 0;
		for (int first = lowest; first <= 600; first += 10) {
			boolean single = rules.marksPerCard() == PlacementRules.MarksPerCard.ONE;
			for (int second = single ? 0 : lowest; second <= (single ? 0 : 600); second += 10) {
				this.scale.add(new CardMarks(first, second));
			}
		}
	}

	/** Return for each judge the different cards, one list a choice, one card a team. */
	List<List<List<CardMarks>>> choices(int toSkate) {
		List<List<List<CardMarks>>> choices = new ArrayList<>();
		for (int judge = 0; judge < this.judges; judge++) {
			choices.add((toSkate == 1) ? single(judge) : pairs(judge));
		}
		return choices;
	}

	private List<List<CardMarks>> single(int judge) {
		Map<String, List<CardMarks>> found = new LinkedHashMap<>();
		this.scale.forEach((card) -> found.putIfAbsent(signature(judge, card), List.of(card)));
		return List.copyOf(found.values());
	}

	private List<List<CardMarks>> pairs(int judge) {
		Map<String, List<CardMarks>> extremes = new LinkedHashMap<>();
		for (CardMarks card : this.scale) {
			List<CardMarks> known = extremes.computeIfAbsent(signature(judge, card),
					(signature) -> List.of(card, card));
			extremes.put(signature(judge, card), List.of((compare(card, known.get(0)) > 0) ? card : known.get(0),
					(compare(card, known.get(1)) < 0) ? card : known.get(1)));
		}
		List<CardMarks> cards = extremes.values().stream().flatMap(List::stream).toList();
		Map<String, List<CardMarks>> found = new LinkedHashMap<>();
		for (CardMarks one : cards) {
			for (CardMarks other : cards) {
				found.putIfAbsent(signature(judge, one) + signature(judge, other) + compare(one, other),
						List.of(one, other));
			}
		}
		return List.copyOf(found.values());
	}

	private String signature(int judge, CardMarks card) {
		StringBuilder signature = new StringBuilder();
		this.marked.forEach((team) -> signature.append(compare(card, team.cards().get(judge))).append(' '));
		return signature.toString();
	}

	private int compare(CardMarks one, CardMarks other) {
		int byTotal = Integer.compare(one.total(), other.total());
		return (byTotal != 0) ? byTotal : Integer.compare(this.rules.cardTieBreak().decidingMark(one),
				this.rules.cardTieBreak().decidingMark(other));
	}

	/** Call with every combination of choices; the array is used again. */
	static void combine(List<List<List<CardMarks>>> choices, Consumer<int[]> each) {
		int[] chosen = new int[choices.size()];
		int judge = 0;
		while (judge < chosen.length) {
			each.accept(chosen);
			for (judge = 0; judge < chosen.length && ++chosen[judge] == choices.get(judge).size(); judge++) {
				chosen[judge] = 0;
			}
		}
	}

	/** Return how each judge ranks everybody, as numbers that fall from the best. */
	int[][] ranks(List<List<List<CardMarks>>> choices, int judge) {
		int[][] ranks = new int[choices.get(judge).size()][];
		for (int choice = 0; choice < ranks.length; choice++) {
			List<CardMarks> all = new ArrayList<>(this.marked.stream().map((team) -> team.cards().get(judge)).toList());
			all.addAll(choices.get(judge).get(choice));
			ranks[choice] = all.stream()
				.mapToInt((card) -> card.total() * 1000 + this.rules.cardTieBreak().decidingMark(card))
				.toArray();
		}
		return ranks;
	}

	/** Return the teams with the cards chosen. */
	List<EntryCards> cards(List<List<List<CardMarks>>> choices, int[] chosen, List<String> toSkate) {
		List<EntryCards> all = new ArrayList<>(this.marked);
		for (int i = 0; i < toSkate.size(); i++) {
			int team = i;
			all.add(EntryCards.skated(toSkate.get(i),
					Arrays.stream(range(chosen.length))
						.mapToObj((judge) -> choices.get(judge).get(chosen[judge]).get(team))
						.toList()));
		}
		return all;
	}

	private static int[] range(int size) {
		int[] range = new int[size];
		Arrays.setAll(range, (i) -> i);
		return range;
	}

}
