package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.ranking.NaNStrategy;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Ordinals, places and totals worked out a second time by Apache Commons Math, which
 * knows nothing of skating. It ranks ascending, so whatever is better when higher is
 * turned round.
 */
class CommonsMathTests {

	private static final int PANELS = 2000;

	private final Random random = new Random(20_261_125);

	private final RandomPanels panels = new RandomPanels(this.random);

	/** A judge's ordinals are the ranks of that judge's cards. */
	@ParameterizedTest
	@CsvSource({ "BETTER_THEN_SKIP,MINIMUM", "MEAN,AVERAGE" })
	void ordinalsAreRanksOfTheCards(PlacementRules.SharedOrdinals shared, TiesStrategy ties) {
		PlacementRules rules = PlacementRules.majority(SegmentKind.FREE).withSharedOrdinals(shared);
		int compared = 0;
		for (int i = 0; i < PANELS; i++) {
			List<EntryCards> entries = this.panels.next(10, 1 + 2 * (i % 5));
			SegmentStanding standing = PlacementTabulation.ofCards(rules, entries);
			for (int judge = 0; judge < standing.judges(); judge++) {
				int seat = judge;
				double[] ranks = ranks(ties,
						entries.stream().mapToDouble((entry) -> -key(entry.cards().get(seat))).toArray());
				for (int j = 0; j < ranks.length; j++) {
					PlacedEntry row = standing.row(entries.get(j).entry()).orElseThrow();
					assertThat((double) row.ordinals().get(seat)).isEqualTo(ranks[j] * Hundredths.ONE);
					compared++;
				}
			}
		}
		assertThat(compared).isGreaterThan(PANELS * 10);
	}

	/** In a free skating the second mark parts equal totals; it is at most 600. */
	private static double key(CardMarks card) {
		return card.total() * 1000.0 + card.second();
	}

	/** Places by one figure are ranks of it, ties getting the better one. */
	@Test
	void placesByOneFigureAreItsRanks() {
		for (int i = 0; i < PANELS; i++) {
			Criterion criterion = Criterion.values()[i % Criterion.values().length];
			List<Ranking.Contender> contenders = IntStream.range(0, 1 + this.random.nextInt(12))
				.mapToObj((j) -> new Ranking.Contender("E" + j,
						List.of(new Figures.Measure(criterion, this.random.nextInt(9) - 4))))
				.toList();
			double[] ranks = ranks(TiesStrategy.MINIMUM, contenders.stream()
				.mapToDouble(
						(contender) -> (criterion.higherIsBetter() ? -1.0 : 1.0) * contender.measures().get(0).value())
				.toArray());
			for (Ranking.Rank rank : Ranking.of(contenders, Set.of())) {
				assertThat((double) rank.place()).isEqualTo(ranks[Integer.parseInt(rank.entry().substring(1))]);
			}
		}
	}

	/** The majority place of an odd panel is the median of the ordinals. */
	@Test
	void majorityPlaceIsTheMedian() {
		for (int i = 0; i < PANELS; i++) {
			List<Integer> ordinals = new ArrayList<>(
					IntStream.range(0, 1 + 2 * (i % 7)).mapToObj((j) -> 100 * (1 + this.random.nextInt(9))).toList());
			double[] values = ordinals.stream().mapToDouble(Integer::intValue).toArray();
			Figures.MajorityFigures figures = Figures.MajorityFigures.of(ordinals);
			assertThat((double) figures.majorityPlace()).isEqualTo(StatUtils.percentile(values, 50));
			assertThat((double) figures.totalOrdinals()).isEqualTo(StatUtils.sum(values));
		}
	}

	/** Factored totals are weighted sums, their places ranks where no total is equal. */
	@Test
	void placesOfAnEventAreRanksOfTheFactoredTotals() {
		int compared = 0;
		for (int i = 0; i < PANELS; i++) {
			List<EntryPlaces> entries = entries();
			EventStanding standing = Combination.combine(CombinationRules.ofFactors(List.of(50, 100)), entries);
			List<EventStanding.EventRow> rows = standing.rows()
				.stream()
				.sorted(Comparator.comparing(EventStanding.EventRow::entry))
				.toList();
			double[] totals = entries.stream().mapToDouble(CommonsMathTests::total).toArray();
			double[] ranks = ranks(TiesStrategy.MINIMUM, totals);
			for (int j = 0; j < ranks.length; j++) {
				assertThat((double) rows.get(j).total()).isEqualTo(totals[j]);
				if (isAlone(totals, totals[j])) {
					assertThat((double) Objects.requireNonNull(rows.get(j).place())).isEqualTo(ranks[j]);
					compared++;
				}
			}
		}
		assertThat(compared).isGreaterThan(PANELS);
	}

	private List<EntryPlaces> entries() {
		List<Integer> first = this.panels.shuffled(IntStream.rangeClosed(1, 8).boxed().toList());
		List<Integer> second = this.panels.shuffled(first);
		return IntStream.range(0, 8)
			.mapToObj((j) -> new EntryPlaces("E" + j, EntryStatus.SKATED, List.of(first.get(j), second.get(j))))
			.toList();
	}

	private static double total(EntryPlaces entry) {
		double[] places = entry.places().stream().mapToDouble(Integer::intValue).toArray();
		return StatUtils.sum(new double[] { 50 * places[0], 100 * places[1] });
	}

	private static boolean isAlone(double[] totals, double total) {
		return IntStream.range(0, totals.length).filter((i) -> totals[i] == total).count() == 1;
	}

	private static double[] ranks(TiesStrategy ties, double[] values) {
		return new NaturalRanking(NaNStrategy.FAILED, ties).rank(values);
	}

}
