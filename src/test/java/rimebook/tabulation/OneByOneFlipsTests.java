package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * One-by-one does not end flips, it only makes them rarer. What two teams have against
 * each other never changes; but a newcomer may beat the one and not the other, for which
 * it must have come between them, or level with one of them, on a card.
 */
class OneByOneFlipsTests {

	@ParameterizedTest
	@EnumSource(PlacementRules.EqualJudgesInFavour.class)
	void flipsHappenButNeverWithoutANewcomerBetween(PlacementRules.EqualJudgesInFavour policy) {
		PlacementRules rules = PlacementRules.oneByOne(SegmentKind.FREE).withEqualJudgesInFavour(policy);
		RandomPanels panels = new RandomPanels(new Random(1_998));
		int reversals = 0;
		for (int i = 0; i < 3_000; i++) {
			List<EntryCards> all = panels.next(8, 5);
			List<EntryCards> earlier = new ArrayList<>(all.subList(0, all.size() - 1));
			SegmentStanding before = PlacementTabulation.ofCards(rules, earlier);
			SegmentStanding after = PlacementTabulation.ofCards(rules, all);
			List<CardMarks> newcomer = all.get(all.size() - 1).cards();
			for (Flip flip : Flip.between(before, after)) {
				String one = flip.before().ahead().entry();
				String other = flip.before().behind().entry();
				assertThat(cell(rules, after, one, other)).isEqualTo(cell(rules, before, one, other));
				assertThat(isBetweenSomewhere(newcomer, cards(earlier, one), cards(earlier, other))).isTrue();
				reversals += flip.isReversal() ? 1 : 0;
			}
		}
		assertThat(reversals).isPositive();
	}

	private static OneByOneTable.Cell cell(PlacementRules rules, SegmentStanding standing, String one, String other) {
		return OneByOneTable.of(rules, standing).cell(one, other);
	}

	private static List<CardMarks> cards(List<EntryCards> entries, String entry) {
		return entries.stream().filter((each) -> each.entry().equals(entry)).findFirst().orElseThrow().cards();
	}

	private static boolean isBetweenSomewhere(List<CardMarks> newcomer, List<CardMarks> one, List<CardMarks> other) {
		return IntStream.range(0, newcomer.size())
			.anyMatch((judge) -> compare(newcomer.get(judge), one.get(judge)) != compare(newcomer.get(judge),
					other.get(judge)));
	}

	private static int compare(CardMarks one, CardMarks other) {
		int byTotal = Integer.compare(one.total(), other.total());
		return (byTotal != 0) ? byTotal : Integer.compare(one.second(), other.second());
	}

}
