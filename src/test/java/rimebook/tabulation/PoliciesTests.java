package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Events and panels out of the ordinary: what the rule set is asked and answers. */
class PoliciesTests {

	private static final PlacementRules MAJORITY = PlacementRules.majority(SegmentKind.FREE);

	private static final PlacementRules ONE_MARK = MAJORITY.withMarksPerCard(PlacementRules.MarksPerCard.ONE);

	/**
	 * One mark a judge: the total is that mark and equal ones are level (slides
	 * "Introduction to 6.0 Scoring System", pdfslide.net).
	 */
	@Test
	void withOneMarkEqualMarksAreLevel() {
		SegmentStanding standing = PlacementTabulation.ofCards(ONE_MARK,
				List.of(cards("A", 46, 50, 48), cards("B", 46, 49, 48), cards("C", 45, 48, 50)));
		assertThat(standing.rows()).extracting(PlacedEntry::entry).containsExactly("A", "B", "C");
		assertThat(standing.row("B").orElseThrow().ordinals()).containsExactly(100, 200, 200);
	}

	/**
	 * Events with one mark: slides "Introduction to 6.0 Scoring System", pdfslide.net.
	 */
	@Test
	void withOneMarkASecondOneIsRefused() {
		assertRefused("second-mark-given", () -> PlacementTabulation.ofCards(ONE_MARK,
				List.of(EntryCards.skated("A", List.of(new CardMarks(460, 10))))));
	}

	/** 0 is "not skated": The 6.0 System, US Figure Skating. */
	@Test
	void withOneMarkNotSkatedIsTheFirstMarkOnly() {
		PlacementRules rules = ONE_MARK.withZeroMark(PlacementRules.ZeroMark.REFUSE);
		assertThat(PlacementTabulation.ofCards(rules, List.of(cards("A", 46))).rows()).hasSize(1);
		assertRefused("zero-mark", () -> PlacementTabulation.ofCards(rules, List.of(cards("A", 0))));
	}

	/** Such an event has one factor, and its places are those of the segment. */
	@Test
	void anEventOfOneSegmentHasThePlacesOfTheSegment() {
		RandomPanels panels = new RandomPanels(new Random(1_063));
		for (int i = 0; i < 200; i++) {
			SegmentStanding segment = PlacementTabulation.ofCards(MAJORITY, panels.next(10, 5));
			EventStanding event = Combination.combine(CombinationRules.ofFactors(100),
					segment.rows().stream().map((row) -> EntryPlaces.of(row.entry(), row.place())).toList());
			assertThat(SheetFixtures.places(event)).isEqualTo(SheetFixtures.places(segment));
		}
	}

	/** A majority is half the panel and one more where the referee allows four judges. */
	@Test
	void anEvenPanelNeedsOneMoreThanHalf() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(
				MAJORITY.withEvenPanel(PlacementRules.EvenPanel.ALLOW), List.of(EntryOrdinals.of("A", 1, 1, 3, 3),
						EntryOrdinals.of("B", 2, 2, 2, 1), EntryOrdinals.of("C", 3, 3, 1, 2)));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 B", "2 A", "3 C");
		assertThat(standing.rows().get(0).figures()).isEqualTo(new Figures.MajorityFigures(200, 4, 700, 700));
	}

	/**
	 * All marks of the failed judge for the segment are replaced, never mixed (from
	 * memory; no rule text was found).
	 */
	@Test
	void aSubstituteCountsForTheWholeSegment() {
		List<EntryCards> panel = List.of(cards("A", 50, 30, 48), EntryCards.without("W", EntryStatus.WITHDRAWN),
				cards("B", 49, 31, 47));
		List<EntryCards> counting = SubstituteJudge.inPlaceOf(panel, 2,
				Map.of("A", new CardMarks(500, 0), "B", new CardMarks(490, 0), "X", new CardMarks(0, 0)));
		assertThat(counting).containsExactly(cards("A", 50, 50, 48), EntryCards.without("W", EntryStatus.WITHDRAWN),
				cards("B", 49, 49, 47));
	}

	/** Replaced as a whole, as above: from memory. */
	@Test
	void theFirstAndTheLastJudgeCanBeReplacedToo() {
		List<EntryCards> panel = List.of(cards("A", 50, 30, 48));
		Map<String, CardMarks> substitute = Map.of("A", new CardMarks(450, 0));
		assertThat(SubstituteJudge.inPlaceOf(panel, 1, substitute)).containsExactly(cards("A", 45, 30, 48));
		assertThat(SubstituteJudge.inPlaceOf(panel, 3, substitute)).containsExactly(cards("A", 50, 30, 45));
	}

	/** Replaced as a whole, as above: from memory. */
	@Test
	void aSubstituteWithoutAllCardsIsRefused() {
		List<EntryCards> panel = List.of(cards("A", 50, 30, 48), cards("B", 49, 31, 47));
		Map<String, CardMarks> some = new TreeMap<>(Map.of("A", new CardMarks(500, 0)));
		assertRefused("substitute-incomplete", () -> SubstituteJudge.inPlaceOf(panel, 2, some));
		some.put("B", new CardMarks(500, 0));
		assertRefused("judge-out-of-range", () -> SubstituteJudge.inPlaceOf(panel, 0, some));
		assertRefused("judge-out-of-range", () -> SubstituteJudge.inPlaceOf(panel, 4, some));
	}

	/**
	 * Disqualified after being marked: from memory, a setting of the federation. B was
	 * 1st, and with B's cards A is before C; without them it is too.
	 */
	@ParameterizedTest
	@CsvSource({ "CLOSE_FINAL_PLACES, 2 A 3 C, 1 A 2 C", "CLOSE_ALL_PLACES, 1 A 2 C, 1 A 2 C",
			"LEAVE_GAPS, 2 A 3 C, 2 A 3 C" })
	void aDisqualifiedTeamKeepsItsGapInSegmentAndEventByTheRules(DisqualifiedPlaces policy, String inSegment,
			String inEvent) {
		List<EntryCards> cards = List.of(cards("A", 48, 48, 48), cards("C", 40, 40, 40),
				new EntryCards("B", EntryStatus.DISQUALIFIED, cards("B", 50, 50, 50).cards()));
		SegmentStanding segment = PlacementTabulation.ofCards(ONE_MARK.withDisqualifiedPlaces(policy), cards);
		assertThat(places(SheetFixtures.places(segment))).isEqualTo(inSegment);
		List<EntryPlaces> places = new ArrayList<>();
		segment.rows()
			.forEach((row) -> places.add(new EntryPlaces(row.entry(), row.status(),
					java.util.Collections.singletonList(segment.occupiedPlace(row.entry()).orElse(null)))));
		assertThat(places(SheetFixtures
			.places(Combination.combine(CombinationRules.ofFactors(100).withDisqualifiedPlaces(policy), places))))
			.isEqualTo(inEvent);
	}

	private static String places(List<String> lines) {
		return String.join(" ", lines.stream().filter((line) -> !line.startsWith("null")).toList());
	}

	private static EntryCards cards(String entry, int... tenths) {
		return EntryCards.skated(entry,
				java.util.Arrays.stream(tenths).mapToObj((mark) -> new CardMarks(mark * CardMarks.STEP, 0)).toList());
	}

	private static void assertRefused(String code, Runnable action) {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(action::run)
			.withMessageEndingWith(".")
			.extracting(TabulationException::code)
			.isEqualTo(code);
	}

}
