package rimebook.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;

class DrawingTests {

	@ParameterizedTest
	@EnumSource
	void everybodyStartsExactlyOnce(DrawMethod method) {
		Random random = new Random(4711);
		for (int round = 0; round < 300; round++) {
			List<Lot> field = Lots.placed("seed " + round, Lots.placesWithTies(1 + random.nextInt(30), random));
			List<List<Lot>> groups = Drawing.of(method, field, 1 + random.nextInt(8));
			assertThat(flat(groups)).containsExactlyInAnyOrderElementsOf(field);
		}
	}

	@ParameterizedTest
	@EnumSource
	void orderInWhichLotsAreHandedInDoesNotMatter(DrawMethod method) {
		Random random = new Random(815);
		for (int round = 0; round < 300; round++) {
			List<Lot> field = Lots.placed("seed " + round, Lots.placesWithTies(1 + random.nextInt(30), random));
			List<Lot> shuffled = new ArrayList<>(field);
			Collections.shuffle(shuffled, random);
			assertThat(Drawing.of(method, shuffled, 5)).isEqualTo(Drawing.of(method, field, 5));
		}
	}

	@Test
	void sameSeedGivesTheSameOrderAndAnotherSeedAnother() {
		List<Integer> once = wholeField("a", 12);
		assertThat(wholeField("a", 12)).isEqualTo(once);
		assertThat(wholeField("b", 12)).isNotEqualTo(once);
	}

	@Test
	void wholeFieldIsInOrderOfTicketsCutIntoEvenGroups() {
		List<List<Lot>> groups = Drawing.of(DrawMethod.WHOLE_FIELD, Lots.field("seed", 14), 4);
		assertThat(groups.stream().map(List::size)).containsExactly(3, 3, 4, 4);
		assertThat(flat(groups)).isSortedAccordingTo(Lot.BY_TICKET);
	}

	@Test
	void insideAGroupTheTicketsDecide() {
		assertThat(Drawing.of(DrawMethod.GROUPS_FROM_STANDING, Lots.field("seed", 19), 4))
			.allSatisfy((group) -> assertThat(group).isSortedAccordingTo(Lot.BY_TICKET));
	}

	@Test
	void reverseOfTheStandingIsWorstFirst() {
		List<List<Lot>> groups = Drawing.of(DrawMethod.REVERSE_STANDING, Lots.field("seed", 7), 4);
		assertThat(Lots.numbers(groups)).containsExactly(List.of(7, 6, 5), List.of(4, 3, 2, 1));
	}

	@Test
	void inReverseOrderEqualPlacesGoByTicket() {
		List<Lot> field = Lots.placed("seed", List.of(1, 2, 2, 2, 5));
		List<Lot> order = flat(Drawing.of(DrawMethod.REVERSE_STANDING, field, 6));
		assertThat(Lots.number(order.get(0))).isEqualTo(5);
		assertThat(order.subList(1, 4)).isSortedAccordingTo(Lot.BY_TICKET);
		assertThat(Lots.number(order.get(4))).isEqualTo(1);
	}

	/**
	 * Six entries, 6,000 seeds: every entry should stand on every position about 1,000
	 * times. Chi-square with 25 degrees of freedom exceeds 52.6 once in a thousand fair
	 * tables; the seeds are fixed, so this table is always the same.
	 */
	@Test
	void everyEntryIsDrawnToEveryPositionEquallyOften() {
		int size = 6;
		int draws = 6000;
		int[][] counts = new int[size][size];
		IntStream.range(0, draws).mapToObj((seed) -> wholeField("seed " + seed, size)).forEach((order) -> {
			for (int position = 0; position < size; position++) {
				counts[order.get(position) - 1][position]++;
			}
		});
		assertThat(chiSquare(counts, draws / (double) size)).isBetween(5.0, 52.6);
	}

	private static double chiSquare(int[][] counts, double expected) {
		return IntStream.range(0, counts.length)
			.boxed()
			.flatMapToDouble((row) -> IntStream.of(counts[row])
				.mapToDouble((count) -> (count - expected) * (count - expected) / expected))
			.sum();
	}

	private static List<Integer> wholeField(String seed, int size) {
		return flat(Drawing.of(DrawMethod.WHOLE_FIELD, Lots.field(seed, size), 6)).stream().map(Lots::number).toList();
	}

	private static List<Lot> flat(List<List<Lot>> groups) {
		return groups.stream().flatMap(List::stream).toList();
	}

}
