package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** Earlier teams that change order when a later one is marked. */
class FlipTests {

	private static final PlacementRules MAJORITY = PlacementRules.majority(SegmentKind.FREE);

	private static SegmentStanding standing(PlacementRules rules, EntryOrdinals... entries) {
		return PlacementTabulation.ofOrdinals(rules, List.of(entries));
	}

	private static EntryOrdinals ordinals(String entry, int... ordinals) {
		return new EntryOrdinals(entry, IntStream.of(ordinals).boxed().toList());
	}

	/**
	 * C is first for judges 1 and 2, last for judge 3, and between the two for 4 and 5.
	 */
	@Test
	void aFlipNamesTheCardsAndBothChains() {
		SegmentStanding before = standing(MAJORITY, ordinals("A", 1, 1, 1, 2, 2), ordinals("B", 2, 2, 2, 1, 1));
		SegmentStanding after = standing(MAJORITY, ordinals("A", 2, 2, 1, 3, 3), ordinals("B", 3, 3, 2, 1, 1),
				ordinals("C", 1, 1, 3, 2, 2));
		List<Flip> flips = Flip.between(before, after);
		assertThat(flips).hasSize(1);
		assertThat(flips.get(0).isReversal()).isTrue();
		assertThat(flips.get(0).newcomers()).containsExactly("C");
		assertThat(flips.get(0).between()).containsExactly(4, 5);
		assertThat(flips.get(0).words(UnaryOperator.identity()).english())
			.isEqualTo("B is now ahead of A: C came between them on the cards of judges 4 and 5. Before: A (1st) is "
					+ "ahead of B (2nd): majority place: 1 against 2, the lower is better. Now: B (2nd) is ahead of A "
					+ "(3rd): majority place: both 2; judges at that place or better: both 3; total of those "
					+ "ordinals: 4 against 5, the lower is better.");
	}

	@Test
	void aPlaceSharedNowOrNoLongerIsAFlipButNoReversal() {
		SegmentStanding apart = standing(MAJORITY, ordinals("A", 1, 1, 2), ordinals("B", 2, 2, 1));
		SegmentStanding level = standing(MAJORITY, ordinals("A", 2, 1, 3), ordinals("B", 3, 2, 1),
				ordinals("C", 1, 3, 2));
		assertThat(Flip.between(apart, level)).hasSize(1)
			.allMatch((flip) -> !flip.isReversal())
			.extracting((flip) -> flip.words((name) -> "Team " + name).english())
			.first()
			.asString()
			.startsWith("Team A and Team B are now level: Team C came between them on the card of judge 3. Before: "
					+ "Team A (1st) is ahead of Team B (2nd): ")
			.contains(" Now: Team A and Team B share 1st: ");
		SegmentStanding other = standing(MAJORITY, ordinals("A", 2, 1, 4), ordinals("B", 3, 2, 1),
				ordinals("C", 1, 4, 2), ordinals("D", 4, 3, 3));
		assertThat(Flip.between(level, other)).extracting((flip) -> flip.words(UnaryOperator.identity()).english())
			.first()
			.asString()
			.startsWith("B is now ahead of A: D came between them on the card of judge 3. Before: B and A share 1st: ");
		assertThat(Flip.between(level, other)).allMatch((flip) -> !flip.isReversal());
	}

	@Test
	void teamsMovedAlikeOnEveryCardAreSaidToBe() {
		PlacePair pair = PlacePair.of(standing(MAJORITY, ordinals("A", 1), ordinals("B", 2)), "A", "B");
		assertThat(new Flip(List.of("C"), pair, pair, List.of()).words(UnaryOperator.identity()).english())
			.startsWith("A is now ahead of B: C moved both alike on every card. Before: ");
	}

	@Test
	void nothingChangesWhereNothingWasAdded() {
		SegmentStanding standing = standing(MAJORITY, ordinals("A", 1, 2, 2), ordinals("B", 2, 1, 1));
		assertThat(Flip.between(standing, standing)).isEmpty();
	}

	@Test
	void teamsWithoutAPlaceAreNoPartOfIt() {
		EntryCards a = EntryCards.skated("A", List.of(new CardMarks(500, 510)));
		EntryCards b = EntryCards.skated("B", List.of(new CardMarks(500, 500)));
		SegmentStanding before = PlacementTabulation.ofCards(MAJORITY,
				List.of(a, b, EntryCards.without("W", EntryStatus.WITHDRAWN)));
		SegmentStanding after = PlacementTabulation.ofCards(MAJORITY,
				List.of(new EntryCards("A", EntryStatus.DISQUALIFIED, a.cards()), b,
						EntryCards.without("W", EntryStatus.WITHDRAWN)));
		assertThat(Flip.between(before, after)).isEmpty();
	}

	@Test
	void theNumberOfJudgesMustBeTheSame() {
		SegmentStanding three = standing(MAJORITY, ordinals("A", 1, 1, 1), ordinals("B", 2, 2, 2));
		SegmentStanding one = standing(MAJORITY, ordinals("A", 2), ordinals("B", 1));
		assertThatThrownBy(() -> Flip.between(three, one)).hasFieldOrPropertyWithValue("code", "uneven-cards");
	}

	@Test
	void aNewcomerBehindEverybodyChangesNothing() {
		RandomPanels panels = new RandomPanels(new Random(7));
		for (int i = 0; i < 200; i++) {
			List<EntryCards> entries = panels.next(8, 5);
			List<EntryCards> all = new ArrayList<>(entries);
			all.add(EntryCards.skated("zz",
					entries.get(0).cards().stream().map((card) -> new CardMarks(0, 0)).toList()));
			assertThat(Flip.between(PlacementTabulation.ofCards(MAJORITY, entries),
					PlacementTabulation.ofCards(MAJORITY, all)))
				.isEmpty();
		}
	}

	/**
	 * Olympic Winter Games 2002, ladies, published places of three skaters: A 1st in the
	 * short programme, B 2nd, D 4th. When B's free skating is marked, A falls from 1st to
	 * 3rd.
	 */
	@Test
	void aPublishedFlipOfAnEventIsExplained() {
		CombinationRules rules = CombinationRules.ofFactors(50, 100);
		EventStanding before = Combination.combine(rules,
				List.of(EntryPlaces.of("A", 1, 2), EntryPlaces.of("B", 2, null), EntryPlaces.of("D", 4, 1)));
		EventStanding after = Combination.combine(rules,
				List.of(EntryPlaces.of("A", 1, 3), EntryPlaces.of("B", 2, 2), EntryPlaces.of("D", 4, 1)));
		assertThat(EventFlip.between(before, after))
			.extracting((flip) -> flip.words(UnaryOperator.identity()).english())
			.containsExactly("D, now 1st, and A, now 3rd, changed order: A had total 2.5 (1st in segment 1 counts 0.5, "
					+ "2nd in segment 2 counts 2.0) and has total 3.5 (1st in segment 1 counts 0.5, 3rd in segment 2 "
					+ "counts 3.0); D had total 3.0 (4th in segment 1 counts 2.0, 1st in segment 2 counts 1.0) and has "
					+ "total 3.0 (4th in segment 1 counts 2.0, 1st in segment 2 counts 1.0).");
		assertThat(EventFlip.between(after, after)).isEmpty();
	}

}
