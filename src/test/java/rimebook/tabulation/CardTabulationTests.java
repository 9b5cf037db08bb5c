package rimebook.tabulation;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** From marks to ordinals, and what happens to teams without marks. */
class CardTabulationTests {

	private static final PlacementRules FREE = PlacementRules.majority(SegmentKind.FREE);

	private static final CardMarks HIGH = new CardMarks(560, 560);

	private static final CardMarks MIDDLE = new CardMarks(500, 500);

	private static final CardMarks LOW = new CardMarks(400, 400);

	/**
	 * Equal totals of a card: guidelines for the manual use of the results system, ISU
	 * 1998.
	 */
	@ParameterizedTest
	@CsvSource({ "FREE, free", "SHORT, short" })
	void segmentKindDecidesEqualTotalsOfACard(SegmentKind kind, String column) {
		SheetFixtures card = SheetFixtures.sheet("one-card.csv");
		SegmentStanding standing = PlacementTabulation.ofCards(PlacementRules.majority(kind), cards(card));
		assertThat(card.rows()).allSatisfy((row) -> assertThat(standing.row(row.get("entry")).orElseThrow().ordinals())
			.containsExactly(Integer.parseInt(row.get(column)) * 100));
	}

	@Test
	void tieBreakCanBeChosenAgainstTheSegmentKind() {
		SheetFixtures card = SheetFixtures.sheet("one-card.csv");
		assertThat(
				PlacementTabulation.ofCards(FREE.withCardTieBreak(PlacementRules.CardTieBreak.FIRST_MARK), cards(card)))
			.isEqualTo(PlacementTabulation.ofCards(PlacementRules.majority(SegmentKind.SHORT), cards(card)));
	}

	/**
	 * 1,1,3: Washington Post, 23 February 1980; the mean is a setting (not excluded by
	 * published places).
	 */
	@Test
	void levelCardsMayHaveTheMeanOfTheirOrdinals() {
		SegmentStanding standing = PlacementTabulation.ofCards(
				FREE.withSharedOrdinals(PlacementRules.SharedOrdinals.MEAN),
				cards(SheetFixtures.sheet("one-card.csv")));
		assertThat(standing.rows()).extracting((row) -> row.entry() + row.ordinals())
			.containsExactly("B[100]", "A[250]", "D[250]", "C[400]", "E[500]");
		assertThat(standing.rows().get(1).why().english()).isEqualTo("2nd, shared with D on equal figures: "
				+ "the only judge had them 2.5 or better, total of those ordinals 2.5, total of all ordinals 2.5; "
				+ "behind B, whose majority was for 1st; ahead of C, whose majority was for 4th or better.");
	}

	/**
	 * The mean is a setting from memory: published places do not exclude it, Washington
	 * Post, 23 February 1980, has 1,1,3.
	 */
	@Test
	void threeLevelCardsShareTheMeanOfThreeOrdinals() {
		SegmentStanding standing = PlacementTabulation.ofCards(
				FREE.withSharedOrdinals(PlacementRules.SharedOrdinals.MEAN),
				List.of(skated("A", HIGH), skated("B", HIGH), skated("C", HIGH), skated("D", LOW)));
		assertThat(standing.rows()).extracting((row) -> row.entry() + row.ordinals())
			.containsExactly("A[200]", "B[200]", "C[200]", "D[400]");
	}

	@Test
	void rowsKeepTheCardsInThePanelsOrder() {
		SegmentStanding standing = PlacementTabulation.ofCards(FREE,
				List.of(skated("A", LOW, HIGH, MIDDLE), skated("B", MIDDLE, MIDDLE, HIGH)));
		assertThat(standing.rows()).extracting(PlacedEntry::entry).containsExactly("B", "A");
		assertThat(standing.rows().get(1).cards()).containsExactly(LOW, HIGH, MIDDLE);
		assertThat(standing.rows().get(1).ordinals()).containsExactly(200, 100, 200);
		assertThat(standing.judges()).isEqualTo(3);
	}

	/** Order of those without a place: common practice. */
	@Test
	void teamsWithoutMarksFollowByStatusAndIdentifier() {
		SegmentStanding standing = PlacementTabulation.ofCards(FREE,
				List.of(EntryCards.without("D", EntryStatus.DISQUALIFIED),
						EntryCards.without("C", EntryStatus.WITHDRAWN), EntryCards.without("B", EntryStatus.WITHDRAWN),
						EntryCards.without("E", EntryStatus.NOT_FINISHED), skated("A", HIGH)));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "null E", "null B", "null C", "null D");
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.endsWith("No place: did not finish the programme.", "No place: withdrawn.", "No place: withdrawn.",
					"No place: disqualified.");
		assertThat(standing.rows().get(1).figures()).isNull();
		assertThat(standing.rows().get(1).shared()).isFalse();
	}

	/** A setting; the three ways are from memory. */
	@ParameterizedTest
	@CsvSource({ "CLOSE_FINAL_PLACES, 3, 300", "LEAVE_GAPS, 3, 300", "CLOSE_ALL_PLACES, 2, 200" })
	void placeOfADisqualifiedTeamIsLeftOrClosedByTheRules(DisqualifiedPlaces policy, int place, int ordinal) {
		SegmentStanding standing = PlacementTabulation.ofCards(FREE.withDisqualifiedPlaces(policy), List
			.of(skated("A", HIGH), new EntryCards("B", EntryStatus.DISQUALIFIED, List.of(MIDDLE)), skated("C", LOW)));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", place + " C", "null B");
		assertThat(standing.row("C").orElseThrow().ordinals()).containsExactly(ordinal);
		assertThat(standing.row("C").orElseThrow().reason().better()).isNotNull()
			.extracting(Reason.Comparison::rivals)
			.isEqualTo(List.of("A"));
		assertThat(standing.row("B").orElseThrow().cards()).containsExactly(MIDDLE);
		assertThat(standing.row("B").orElseThrow().why().english()).isEqualTo("No place: disqualified.");
	}

	/**
	 * Who is disqualified is in no result, and whether the place is left is a setting:
	 * from memory. A shared place leaves the next one out: common practice.
	 */
	@Test
	void placeLevelWithADisqualifiedTeamIsNotCalledShared() {
		SegmentStanding standing = PlacementTabulation.ofCards(FREE, List.of(skated("A", HIGH), skated("B", HIGH),
				new EntryCards("C", EntryStatus.DISQUALIFIED, List.of(HIGH)), skated("D", LOW)));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "1 B", "4 D", "null C");
		assertThat(standing.rows().get(0).reason().sharedWith()).containsExactly("B");
		SegmentStanding one = PlacementTabulation.ofCards(FREE,
				List.of(skated("A", HIGH), new EntryCards("C", EntryStatus.DISQUALIFIED, List.of(HIGH))));
		assertThat(one.rows().get(0).shared()).isFalse();
	}

	@Test
	void nobodyMarkedYetMakesAStandingWithoutPlaces() {
		SegmentStanding standing = PlacementTabulation.ofCards(FREE,
				List.of(EntryCards.without("A", EntryStatus.WITHDRAWN)));
		assertThat(standing.judges()).isZero();
		assertThat(SheetFixtures.places(standing)).containsExactly("null A");
		assertThat(PlacementTabulation.ofCards(FREE, List.of()).rows()).isEmpty();
	}

	/** Odd number of judges: The 6.0 System, US Figure Skating. */
	@Test
	void evenPanelIsRefusedUnlessAllowed() {
		List<EntryCards> entries = List.of(skated("A", HIGH, LOW, LOW, HIGH),
				skated("B", MIDDLE, MIDDLE, MIDDLE, MIDDLE));
		assertRefused("even-panel",
				"The panel has 4 judges; an odd number is expected unless the rule set allows an " + "even panel.",
				() -> PlacementTabulation.ofCards(FREE, entries));
		SegmentStanding standing = PlacementTabulation.ofCards(FREE.withEvenPanel(PlacementRules.EvenPanel.ALLOW),
				entries);
		assertThat(standing.rows()).extracting(PlacedEntry::figures)
			.containsExactly(new Figures.MajorityFigures(200, 4, 600, 600),
					new Figures.MajorityFigures(200, 4, 600, 600));
	}

	/** No rule text on even panels was found; half and one more is our reading. */
	@Test
	void majorityOfAnEvenPanelIsMoreThanHalf() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(FREE.withEvenPanel(PlacementRules.EvenPanel.ALLOW),
				List.of(EntryOrdinals.of("A", 1, 1, 3, 4)));
		assertThat(standing.rows().get(0).figures()).isEqualTo(new Figures.MajorityFigures(300, 3, 500, 900));
	}

	/** 0 is "not skated": The 6.0 System, US Figure Skating. */
	@Test
	void zeroMarkCountsUnlessRefused() {
		List<EntryCards> entries = List.of(skated("A", new CardMarks(0, 200)), skated("C", new CardMarks(200, 0)),
				skated("B", HIGH));
		assertThat(SheetFixtures.places(PlacementTabulation.ofCards(FREE, entries))).containsExactly("1 B", "2 A",
				"3 C");
		PlacementRules strict = FREE.withZeroMark(PlacementRules.ZeroMark.REFUSE);
		assertRefused("zero-mark", "A card of entry 'A' has a mark of 0.0, which this rule set takes for 'not skated'.",
				() -> PlacementTabulation.ofCards(strict, entries));
		assertRefused("zero-mark", "A card of entry 'C' has a mark of 0.0, which this rule set takes for 'not skated'.",
				() -> PlacementTabulation.ofCards(strict, entries.subList(1, 3)));
		assertThat(PlacementTabulation.ofCards(strict, entries.subList(2, 3)).rows()).hasSize(1);
	}

	@Test
	void unevenCardsAreRefused() {
		assertRefused("uneven-cards", "Entry 'B' has 1 cards where others have 3; one of each judge is expected.",
				() -> PlacementTabulation.ofCards(FREE,
						List.of(skated("C", HIGH), skated("A", HIGH, HIGH, LOW), skated("B", HIGH))));
		assertRefused("uneven-cards", "Entry 'A' has 1 cards where others have 3; one of each judge is expected.",
				() -> PlacementTabulation.ofOrdinals(FREE,
						List.of(EntryOrdinals.of("A", 1), EntryOrdinals.of("B", 1, 2, 3))));
	}

	@Test
	void entryListedTwiceIsRefused() {
		assertRefused("duplicate-entry", "Entry 'A' is listed more than once.", () -> PlacementTabulation.ofCards(FREE,
				List.of(skated("A", HIGH), EntryCards.without("A", EntryStatus.WITHDRAWN))));
		assertRefused("duplicate-entry", "Entry 'A' is listed more than once.", () -> PlacementTabulation
			.ofOrdinals(FREE, List.of(EntryOrdinals.of("A", 1), EntryOrdinals.of("A", 1))));
	}

	@Test
	void entryMustHaveAnIdentifierAndTheCardsOfItsStatus() {
		assertRefused("entry-missing", "The entry must have an identifier that is not blank.", () -> skated(" ", HIGH));
		assertRefused("entry-missing", "The entry must have an identifier that is not blank.",
				() -> EntryOrdinals.of("", 1));
		assertRefused("no-judges", "Entry 'A' has skated but has no cards; one card of each judge is expected.",
				() -> skated("A"));
		assertRefused("no-judges", "Entry 'A' has skated but has no cards; one card of each judge is expected.",
				() -> EntryOrdinals.of("A"));
		assertRefused("cards-without-performance", "Entry 'A' is not finished but has cards; none are expected.",
				() -> new EntryCards("A", EntryStatus.NOT_FINISHED, List.of(HIGH)));
		assertRefused("cards-without-performance", "Entry 'A' is withdrawn but has cards; none are expected.",
				() -> new EntryCards("A", EntryStatus.WITHDRAWN, List.of(HIGH)));
	}

	@Test
	void ordinalsAreWholePlacesFromOne() {
		assertRefused("ordinal-out-of-range", "Entry 'A' has the ordinal 0; a whole number from 1 to 9999 is expected.",
				() -> EntryOrdinals.of("A", 1, 0));
		assertRefused("ordinal-out-of-range",
				"Entry 'A' has the ordinal 10000; a whole number from 1 to 9999 is expected.",
				() -> EntryOrdinals.of("A", 10_000));
		assertThat(EntryOrdinals.of("A", 9999).ordinals()).containsExactly(9999);
	}

	/** Scale: The 6.0 System, US Figure Skating. */
	@ParameterizedTest
	@CsvSource({ "-10, 0, first, -10", "610, 0, first, 610", "555, 0, first, 555", "0, -10, second, -10",
			"0, 610, second, 610", "600, 5, second, 5" })
	void marksAreTenthsFromZeroToSix(int first, int second, String field, int wrong) {
		assertRefused(field + "-mark-out-of-range",
				"The " + field + " mark must be 0.0 to 6.0 in steps of 0.1 (0 to 600 hundredths in tens); got " + wrong
						+ " hundredths.",
				() -> new CardMarks(first, second));
	}

	/** Rule 1063, US Figure Skating Governing Council, action 91 of 2014. */
	@Test
	void totalOfACardIsBothMarksTogether() {
		assertThat(new CardMarks(600, 0).total()).isEqualTo(600);
		assertThat(new CardMarks(570, 590).total()).isEqualTo(1160);
	}

	@ParameterizedTest
	@EnumSource(SegmentKind.class)
	void everyRuleHasADefaultAndCanBeChanged(SegmentKind kind) {
		PlacementRules rules = PlacementRules.oneByOne(kind);
		assertThat(rules).isEqualTo(new PlacementRules(PlacementRules.PlacementMethod.ONE_BY_ONE, kind.cardTieBreak(),
				PlacementRules.SharedOrdinals.BETTER_THEN_SKIP, PlacementRules.EqualJudgesInFavour.BOTH_WIN,
				PlacementRules.EvenPanel.REFUSE, PlacementRules.ZeroMark.COUNT, DisqualifiedPlaces.CLOSE_FINAL_PLACES));
		assertThat(PlacementRules.majority(kind).method()).isEqualTo(PlacementRules.PlacementMethod.MAJORITY);
		assertThat(rules.withCardTieBreak(PlacementRules.CardTieBreak.FIRST_MARK)
			.withSharedOrdinals(PlacementRules.SharedOrdinals.MEAN)
			.withEqualJudgesInFavour(PlacementRules.EqualJudgesInFavour.NEITHER)
			.withEvenPanel(PlacementRules.EvenPanel.ALLOW)
			.withZeroMark(PlacementRules.ZeroMark.REFUSE)
			.withDisqualifiedPlaces(DisqualifiedPlaces.LEAVE_GAPS))
			.isEqualTo(new PlacementRules(PlacementRules.PlacementMethod.ONE_BY_ONE,
					PlacementRules.CardTieBreak.FIRST_MARK, PlacementRules.SharedOrdinals.MEAN,
					PlacementRules.EqualJudgesInFavour.NEITHER, PlacementRules.EvenPanel.ALLOW,
					PlacementRules.ZeroMark.REFUSE, DisqualifiedPlaces.LEAVE_GAPS));
	}

	private static List<EntryCards> cards(SheetFixtures sheet) {
		return sheet.rows()
			.stream()
			.map((row) -> skated(row.get("entry"), new CardMarks(mark(row.get("first")), mark(row.get("second")))))
			.toList();
	}

	private static int mark(String text) {
		return Integer.parseInt(text.replace(".", "")) * 10;
	}

	private static EntryCards skated(String entry, CardMarks... cards) {
		return EntryCards.skated(entry, List.of(cards));
	}

	private static void assertRefused(String code, String sentence, Runnable action) {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(action::run)
			.withMessage(sentence)
			.extracting(TabulationException::code)
			.isEqualTo(code);
	}

}
