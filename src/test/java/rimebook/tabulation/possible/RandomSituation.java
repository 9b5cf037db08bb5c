package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;

/**
 * A segment under way, made from a seed: teams marked closely or level, some withdrawn or
 * disqualified, judges at the ends of the scale, every setting of the rules.
 */
record RandomSituation(PlacementRules rules, List<EntryCards> entries, int judges, List<String> toSkate,
		SegmentUnderWay.EarlierSegments earlier) {

	static RandomSituation next(Random random, PlacementRules.PlacementMethod method, int judges, int mostMarked,
			int toSkate) {
		PlacementRules rules = rules(random, method);
		List<EntryCards> entries = new ArrayList<>();
		int marked = 1 + random.nextInt(mostMarked);
		int spread = 1 + random.nextInt(12);
		int lowest = List.of(30, 30, 48, 1).get(random.nextInt(4));
		for (int i = 0; i < marked; i++) {
			EntryStatus status = (random.nextInt(8) == 0) ? EntryStatus.DISQUALIFIED : EntryStatus.SKATED;
			entries.add(new EntryCards("M" + i, status, IntStream.range(0, judges)
				.mapToObj((judge) -> new CardMarks(mark(random, lowest, spread),
						(rules.marksPerCard() == PlacementRules.MarksPerCard.ONE) ? 0 : mark(random, lowest, spread)))
				.toList()));
		}
		if (random.nextInt(5) == 0) {
			entries.add(EntryCards.without("W", EntryStatus.WITHDRAWN));
		}
		List<String> waiting = IntStream.range(0, toSkate).mapToObj((i) -> "U" + i).toList();
		return new RandomSituation(rules, entries, judges, waiting, earlier(random, entries, waiting));
	}

	private static int mark(Random random, int lowest, int spread) {
		return 10 * Math.min(60, lowest + random.nextInt(spread));
	}

	private static PlacementRules rules(Random random, PlacementRules.PlacementMethod method) {
		return new PlacementRules(method, pick(random, PlacementRules.CardTieBreak.values()),
				(random.nextInt(4) == 0) ? PlacementRules.SharedOrdinals.MEAN
						: PlacementRules.SharedOrdinals.BETTER_THEN_SKIP,
				pick(random, PlacementRules.EqualJudgesInFavour.values()), PlacementRules.EvenPanel.REFUSE,
				pick(random, PlacementRules.ZeroMark.values()), pick(random, DisqualifiedPlaces.values()),
				(random.nextInt(8) == 0) ? PlacementRules.MarksPerCard.ONE : PlacementRules.MarksPerCard.TWO);
	}

	private static SegmentUnderWay.EarlierSegments earlier(Random random, List<EntryCards> entries,
			List<String> waiting) {
		int segments = random.nextInt(3);
		List<Integer> factors = IntStream.rangeClosed(0, segments)
			.mapToObj((i) -> List.of(50, 100, 40, 60).get(random.nextInt(4)))
			.toList();
		CombinationRules rules = new CombinationRules(factors, pick(random, CombinationRules.IncompleteOrder.values()),
				pick(random, DisqualifiedPlaces.values()));
		List<EntryPlaces> places = new ArrayList<>();
		entries.forEach((entry) -> places.add(places(random, entry.entry(), entry.status(), segments)));
		waiting.forEach((entry) -> places.add(places(random, entry, EntryStatus.SKATED, segments)));
		places.add(places(random, "N", EntryStatus.SKATED, segments));
		return new SegmentUnderWay.EarlierSegments(rules, places);
	}

	private static EntryPlaces places(Random random, String entry, EntryStatus status, int segments) {
		List<@Nullable Integer> places = new ArrayList<>();
		for (int i = 0; i < segments; i++) {
			places.add((random.nextInt(12) == 0) ? null : (Integer) (1 + random.nextInt(6)));
		}
		return new EntryPlaces(entry, status, places);
	}

	@SafeVarargs
	private static <T> T pick(Random random, T... values) {
		return values[random.nextInt(values.length)];
	}

	SegmentUnderWay underWay() {
		return SegmentUnderWay.of(this.rules, PlacementTabulation.ofCards(this.rules, this.entries), this.toSkate)
			.after(this.earlier);
	}

}
