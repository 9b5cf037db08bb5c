package rimebook.draw;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class StandingGroupsTests {

	@Test
	void worstGroupComesFirst() {
		assertThat(groups(4, 1, 2, 3, 4, 5, 6, 7)).containsExactly(List.of(5, 6, 7), List.of(1, 2, 3, 4));
	}

	@Test
	void tieAtTheBorderGoesToTheBetterGroup() {
		assertThat(groups(4, 1, 2, 3, 4, 4, 6, 7, 8)).containsExactly(List.of(6, 7, 8), List.of(1, 2, 3, 4, 5));
	}

	@Test
	void nobodyElseChangesGroup() {
		assertThat(groups(4, 1, 2, 3, 4, 4, 6, 7, 8, 9, 10, 11, 12)).containsExactly(List.of(9, 10, 11, 12),
				List.of(6, 7, 8), List.of(1, 2, 3, 4, 5));
	}

	@Test
	void groupThatGrowsByTwoIsDividedIntoTheTiedAndTheRest() {
		assertThat(groups(4, 1, 2, 3, 4, 4, 4, 7, 8)).containsExactly(List.of(7, 8), List.of(4, 5, 6),
				List.of(1, 2, 3));
	}

	@Test
	void groupWithRoomTakesTheTiedUndivided() {
		assertThat(groups(4, 1, 2, 3, 4, 5, 6, 7, 8, 8, 8)).containsExactly(List.of(8, 9, 10), List.of(5, 6, 7),
				List.of(1, 2, 3, 4));
		assertThat(groups(4, 1, 2, 3, 4, 5, 6, 7, 7, 7, 10)).containsExactly(List.of(10), List.of(5, 6, 7, 8, 9),
				List.of(1, 2, 3, 4));
	}

	@Test
	void tieOverTwoBordersStaysTogetherAndTheEmptiedGroupIsLeftOut() {
		assertThat(groups(4, 1, 2, 3, 4, 4, 4, 4, 4, 4, 10, 11, 12)).containsExactly(List.of(10, 11, 12),
				List.of(4, 5, 6, 7, 8, 9), List.of(1, 2, 3));
	}

	@Test
	void everybodyTiedIsOneGroup() {
		assertThat(groups(2, 1, 1, 1, 1, 1)).containsExactly(List.of(1, 2, 3, 4, 5));
	}

	@Test
	void tieInsideAGroupChangesNothing() {
		assertThat(groups(3, 1, 1, 3, 4, 5, 5)).containsExactly(List.of(4, 5, 6), List.of(1, 2, 3));
	}

	@Test
	void entriesWithoutAPlaceStandBehindTheLast() {
		assertThat(groups(2, null, 2, 1, null)).containsExactly(List.of(1, 4), List.of(2, 3));
		assertThat(groups(2, 1, null, null, null)).containsExactly(List.of(2, 3, 4), List.of(1));
	}

	@Test
	void whoeverSharesAPlaceSharesTheGroupInAnyField() {
		Random random = new Random(20261126);
		for (int round = 0; round < 2000; round++) {
			int size = 1 + random.nextInt(40);
			int maximum = 1 + random.nextInt(8);
			List<List<Lot>> groups = StandingGroups.of(Lots.placed("t", Lots.placesWithTies(size, random)), maximum);
			assertThat(groups).allSatisfy((group) -> assertThat(group).isNotEmpty());
			assertThat(groups.stream().mapToInt(List::size).sum()).isEqualTo(size);
			assertThat(groups).allSatisfy((group) -> assertBound(group, maximum));
			for (int i = 1; i < groups.size(); i++) {
				assertWorse(groups.get(i - 1), groups.get(i));
			}
		}
	}

	/** At most one above the maximum, unless all of the group share one place. */
	private static void assertBound(List<Lot> group, int maximum) {
		assertThat(group.size() <= maximum + 1 || group.stream().allMatch(group.get(0)::isTiedWith)).isTrue();
	}

	private static void assertWorse(List<Lot> earlier, List<Lot> later) {
		int best = earlier.stream().mapToInt((lot) -> lot.place()).min().orElseThrow();
		int worst = later.stream().mapToInt((lot) -> lot.place()).max().orElseThrow();
		assertThat(best).isGreaterThan(worst);
	}

	private static List<List<Integer>> groups(int maximum, Integer... places) {
		List<List<Lot>> groups = StandingGroups.of(Lots.placed("t", Arrays.asList(places)), maximum);
		return Lots.numbers(groups).stream().map((group) -> group.stream().sorted().toList()).toList();
	}

}
