package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** Nonsense ends in a result or in a refusal with a name, never in anything else. */
class AbsurdInputTests {

	private static final int INPUTS = 30_000;

	private static final int[] NUMBERS = { Integer.MIN_VALUE, -100, -1, 0, 1, 2, 3, 10, 100, 590, 600, 610, 9999,
			10_000, Integer.MAX_VALUE };

	private final Random random = new Random(42);

	private final TreeSet<String> refusals = new TreeSet<>();

	private int results;

	@Test
	void everyInputEndsInAResultOrANamedRefusal() {
		for (int i = 0; i < INPUTS; i++) {
			attempt(() -> PlacementTabulation.ofCards(rules(), list(this::cards)));
			attempt(() -> PlacementTabulation.ofOrdinals(rules(), list(this::ordinals)));
			attempt(() -> Combination.combine(combinationRules(), list(this::places)));
		}
		assertThat(this.results).isGreaterThan(INPUTS / 10);
		assertThat(this.refusals).containsExactly("cards-without-performance", "duplicate-entry", "entry-missing",
				"even-panel", "factor-out-of-range", "factors-missing", "first-mark-out-of-range", "no-judges",
				"ordinal-out-of-range", "place-out-of-range", "second-mark-given", "second-mark-out-of-range",
				"uneven-cards", "uneven-places", "zero-mark");
	}

	private void attempt(Supplier<Object> input) {
		try {
			Object standing = input.get();
			assertThat(sentences(standing)).allMatch((sentence) -> sentence.endsWith("."));
			this.results++;
		}
		catch (TabulationException ex) {
			assertThat(ex).hasMessageEndingWith(".");
			this.refusals.add(ex.code());
		}
	}

	private static Stream<String> sentences(Object standing) {
		return (standing instanceof SegmentStanding segment) ? segment.rows().stream().map((row) -> row.why().english())
				: ((EventStanding) standing).rows().stream().map((row) -> row.why().english());
	}

	private PlacementRules rules() {
		return new PlacementRules(pick(PlacementRules.PlacementMethod.values()),
				pick(PlacementRules.CardTieBreak.values()), pick(PlacementRules.SharedOrdinals.values()),
				pick(PlacementRules.EqualJudgesInFavour.values()), pick(PlacementRules.EvenPanel.values()),
				pick(PlacementRules.ZeroMark.values()), pick(DisqualifiedPlaces.values()),
				(this.random.nextInt(6) == 0) ? PlacementRules.MarksPerCard.ONE : PlacementRules.MarksPerCard.TWO);
	}

	private CombinationRules combinationRules() {
		List<Integer> factors = this.random.nextBoolean() ? List.of(50, 100) : list(this::number);
		return new CombinationRules(factors, pick(CombinationRules.IncompleteOrder.values()),
				pick(DisqualifiedPlaces.values()));
	}

	private EntryCards cards() {
		return new EntryCards(name(), pick(EntryStatus.values()), list(() -> new CardMarks(mark(), mark())));
	}

	private EntryOrdinals ordinals() {
		return new EntryOrdinals(name(), list(() -> sane() ? 1 + this.random.nextInt(4) : number()));
	}

	private EntryPlaces places() {
		List<@Nullable Integer> places = new ArrayList<>();
		int count = sane() ? 2 : this.random.nextInt(4);
		for (int i = 0; i < count; i++) {
			places
				.add((this.random.nextInt(4) == 0) ? null : sane() ? (Integer) (1 + this.random.nextInt(4)) : number());
		}
		return new EntryPlaces(name(), pick(EntryStatus.values()), places);
	}

	private int mark() {
		return sane() ? 10 * this.random.nextInt(61) : number();
	}

	private Integer number() {
		return NUMBERS[this.random.nextInt(NUMBERS.length)];
	}

	private boolean sane() {
		return this.random.nextInt(12) != 0;
	}

	private String name() {
		return pick("A", "B", "C", "D", "E", "F", "G", "H", "\u0000", "😀", "=1+1", " ");
	}

	private <T> List<T> list(Supplier<T> element) {
		return Stream.generate(element).limit(this.random.nextInt(4)).toList();
	}

	@SafeVarargs
	private <T> T pick(T... values) {
		return values[this.random.nextInt(values.length)];
	}

}
