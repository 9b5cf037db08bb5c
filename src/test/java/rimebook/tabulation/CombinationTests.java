package rimebook.tabulation;

import java.util.Arrays;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class CombinationTests {

	private static final CombinationRules SHORT_AND_FREE = CombinationRules.ofFactors(50, 100);

	@ParameterizedTest
	@CsvSource({ "event-1997-worlds-men, 24, 0", "event-1999-worlds-men, 24, 0", "event-1998-worlds-men, 30, 0",
			"event-1998-worlds-ladies, 30, 0", "event-1998-worlds-pairs, 20, 0", "event-1998-worlds-dance, 30, 0",
			"event-2000-worlds-synchronized, 21, 21", "event-1997-europeans-pairs, 17, 17",
			"event-1997-trophee-lalique-men, 10, 10" })
	void everyPublishedFinalPlaceAndTotalIsReproduced(String name, int places, int totals) {
		SheetFixtures sheet = SheetFixtures.sheet(name + ".csv");
		EventStanding standing = Combination.combine(CombinationRules.ofFactors(sheet.factors()),
				sheet.segmentPlaces());
		assertThat(SheetFixtures.places(standing)).hasSize(places).isEqualTo(sheet.places("final"));
		List<String> published = sheet.rows()
			.stream()
			.filter((row) -> !row.get("total").isEmpty())
			.map((row) -> row.get("entry") + " " + row.get("total"))
			.toList();
		assertThat(published).hasSize(totals)
			.allSatisfy((line) -> assertThat(standing.rows())
				.extracting((row) -> row.entry() + " " + Hundredths.decimal(row.total()))
				.contains(line));
	}

	@ParameterizedTest
	@ValueSource(strings = { "event-1998-worlds-dance", "event-1998-worlds-men" })
	void publishedOrderOfThoseNotInTheFinalIsAlsoThatOfTheirTotals(String name) {
		SheetFixtures sheet = SheetFixtures.sheet(name + ".csv");
		CombinationRules rules = CombinationRules.ofFactors(sheet.factors())
			.withIncompleteOrder(CombinationRules.IncompleteOrder.TOTAL_SO_FAR);
		assertThat(SheetFixtures.places(Combination.combine(rules, sheet.segmentPlaces())))
			.isEqualTo(sheet.places("final"));
	}

	/** 1998 Europeans, ladies: three teams on 3.5. */
	@Test
	void equalTotalsGoByTheLastSegment() {
		EventStanding standing = combine(EntryPlaces.of("A", 1, 3), EntryPlaces.of("B", 3, 2),
				EntryPlaces.of("C", 5, 1));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 C", "2 B", "3 A");
		assertThat(standing.rows()).extracting(EventStanding.EventRow::total).containsOnly(350);
		assertThat(standing.rows().get(1).why().english()).isEqualTo("2nd: total 3.5 (3rd in segment 1 counts 1.5, "
				+ "2nd in segment 2 counts 2.0); behind C, with the same total but 1st in the last segment; "
				+ "ahead of A, with the same total but 3rd in the last segment.");
	}

	/** 2002 Olympics, ladies: the last to skate turns the order of the others round. */
	@Test
	void placesFlipWhenTheLastTeamIsPlaced() {
		EventStanding before = combine(EntryPlaces.of("A", 1, 2), EntryPlaces.of("B", 2, null),
				EntryPlaces.of("C", 3, 3), EntryPlaces.of("D", 4, 1));
		assertThat(SheetFixtures.places(before)).containsExactly("1 A", "2 D", "3 C", "4 B");
		assertThat(before.rows()).extracting(EventStanding.EventRow::complete).containsExactly(true, true, true, false);
		EventStanding after = combine(EntryPlaces.of("A", 1, 3), EntryPlaces.of("B", 2, 2), EntryPlaces.of("C", 3, 4),
				EntryPlaces.of("D", 4, 1));
		assertThat(SheetFixtures.places(after)).containsExactly("1 D", "2 B", "3 A", "4 C");
		assertThat(after.rows()).extracting(EventStanding.EventRow::total).containsExactly(300, 300, 350, 550);
	}

	/** Shared places: common practice. */
	@Test
	void equalInTheLastSegmentTooSharesThePlace() {
		EventStanding standing = combine(EntryPlaces.of("C", 2, 2), EntryPlaces.of("B", 2, 2),
				EntryPlaces.of("A", 1, 1), EntryPlaces.of("D", 4, 4));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "2 B", "2 C", "4 D");
		assertThat(standing.rows()).extracting(EventStanding.EventRow::shared)
			.containsExactly(false, true, true, false);
		assertThat(standing.rows().get(1).why().english())
			.isEqualTo("2nd, shared with C on equal figures: total 3.0 (2nd in segment 1 counts 1.0, "
					+ "2nd in segment 2 counts 2.0); behind A, with 1.5; ahead of D, with 6.0.");
		assertThat(standing.rows().get(3).why().english()).endsWith("; behind B and C, with 3.0.");
	}

	/** Common practice of published results of the 1990s. */
	@Test
	void teamsWithoutAPlaceInEverySegmentFollowThoseWhoHaveOne() {
		EventStanding standing = combine(EntryPlaces.of("A", 2, null), EntryPlaces.of("B", 4, 2),
				EntryPlaces.of("C", 3, 1), EntryPlaces.of("D", 1, null), EntryPlaces.of("E", null, null));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 C", "2 B", "3 D", "4 A", "null E");
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.containsExactly(
					"1st: total 2.5 (3rd in segment 1 counts 1.5, 1st in segment 2 counts 1.0); ahead of B, with 4.0.",
					"2nd: total 4.0 (4th in segment 1 counts 2.0, 2nd in segment 2 counts 2.0); behind C, with 2.5; "
							+ "ahead of D, without a place in every segment.",
					"3rd: so far 0.5 (1st in segment 1 counts 0.5, no place in segment 2); "
							+ "behind B, with a place in every segment; ahead of A, who were 2nd in the last segment of both.",
					"4th: so far 1.0 (2nd in segment 1 counts 1.0, no place in segment 2); "
							+ "behind D, who were 1st in the last segment of both.",
					"No place yet: nothing skated so far.");
	}

	/**
	 * Whoever did not reach the last segment follows those who did, in the order of the
	 * last one skated: published results of Worlds 1997 to 2000, iceskatingintnl.com. 20,
	 * 30 and 50 per cent: goldenskate.com, March 2004. The order by the total so far is a
	 * setting from memory.
	 */
	@Test
	void incompleteTeamsOfThreeSegmentsGoByTheSegmentReached() {
		CombinationRules rules = CombinationRules.ofFactors(20, 30, 50);
		List<EntryPlaces> entries = List.of(EntryPlaces.of("A", 20, 25, null), EntryPlaces.of("B", 26, 24, null),
				EntryPlaces.of("C", 1, null, null), EntryPlaces.of("D", null, 24, null),
				EntryPlaces.of("E", 27, 24, null));
		EventStanding standing = Combination.combine(rules, entries);
		assertThat(SheetFixtures.places(standing)).containsExactly("1 B", "2 E", "3 D", "4 A", "5 C");
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.containsExactly(
					"1st: so far 12.4 (26th in segment 1 counts 5.2, 24th in segment 2 counts 7.2, no place in segment 3); "
							+ "ahead of E, with 12.6 so far.",
					"2nd: so far 12.6 (27th in segment 1 counts 5.4, 24th in segment 2 counts 7.2, no place in segment 3); "
							+ "behind B, with 12.4 so far; ahead of D, with a place in one segment.",
					"3rd: so far 7.2 (no place in segment 1, 24th in segment 2 counts 7.2, no place in segment 3); "
							+ "behind E, with a place in two segments; ahead of A, who were 25th in the last segment of both.",
					"4th: so far 11.5 (20th in segment 1 counts 4.0, 25th in segment 2 counts 7.5, no place in segment 3); "
							+ "behind D, who were 24th in the last segment of both; ahead of C, whose last segment was segment 1.",
					"5th: so far 0.2 (1st in segment 1 counts 0.2, no place in segment 2, no place in segment 3); "
							+ "behind A, whose last segment was segment 2.");
		assertThat(SheetFixtures.places(
				Combination.combine(rules.withIncompleteOrder(CombinationRules.IncompleteOrder.TOTAL_SO_FAR), entries)))
			.containsExactly("1 A", "2 B", "3 E", "4 D", "5 C");
	}

	/**
	 * No place for who withdrew, and no earlier place moves up: results of Worlds 1997,
	 * men, and Worlds 2000, pairs, iceskatingintnl.com. Not finished and disqualified
	 * alike: from memory.
	 */
	@Test
	void teamsThatLeaveKeepNoPlaceAndMoveNobodyInEarlierSegments() {
		EventStanding standing = combine(EntryPlaces.of("A", 4, 1), EntryPlaces.of("B", 2, 2),
				entry("W", EntryStatus.WITHDRAWN, 1, null), entry("N", EntryStatus.NOT_FINISHED, 3, null),
				entry("X", EntryStatus.DISQUALIFIED, 5, 3));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "2 B", "null N", "null W", "null X");
		assertThat(standing.rows()).extracting(EventStanding.EventRow::total).containsExactly(300, 300, 150, 50, 550);
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.endsWith("No place: did not finish the programme.", "No place: withdrawn.", "No place: disqualified.");
		assertThat(standing.rows().get(1).why().english()).doesNotContain("ahead of");
	}

	/** A setting; the three ways are from memory. */
	@ParameterizedTest
	@CsvSource({ "CLOSE_FINAL_PLACES, 1 A, 2 C", "CLOSE_ALL_PLACES, 1 A, 2 C", "LEAVE_GAPS, 1 A, 3 C" })
	void placeOfADisqualifiedTeamIsClosedOrLeftByTheRules(DisqualifiedPlaces policy, String first, String second) {
		CombinationRules rules = SHORT_AND_FREE.withDisqualifiedPlaces(policy);
		EventStanding standing = Combination.combine(rules,
				List.of(EntryPlaces.of("A", 1, 1), entry("B", EntryStatus.DISQUALIFIED, 2, 2),
						EntryPlaces.of("C", 3, 3), entry("D", EntryStatus.DISQUALIFIED, null, null),
						entry("E", EntryStatus.WITHDRAWN, 1, 2), entry("F", EntryStatus.WITHDRAWN, 1, 2)));
		assertThat(SheetFixtures.places(standing)).containsExactly(first, second, "null E", "null F", "null B",
				"null D");
		assertThat(standing.rows().get(1).why().english()).contains("behind A, with 1.5.");
	}

	@Test
	void factorsMayGoToTheirLimits() {
		assertThat(CombinationRules.ofFactors(1, 10_000).factors()).containsExactly(1, 10_000);
	}

	@Test
	void standingKeepsFactorsAndFactoredPlaces() {
		EventStanding standing = Combination.combine(CombinationRules.ofFactors(20, 30, 75),
				List.of(EntryPlaces.of("A", 1, null, 3)));
		assertThat(standing.factors()).containsExactly(20, 30, 75);
		assertThat(standing.row("A").orElseThrow().factored()).containsExactly(20, null, 225);
		assertThat(standing.row("A").orElseThrow().places()).containsExactly(1, null, 3);
		assertThat(standing.row("B")).isEmpty();
	}

	@Test
	void onlyTeamIsSaidToBeAlone() {
		assertThat(combine(EntryPlaces.of("A", 1, 1)).rows().get(0).why().english()).isEqualTo(
				"1st: total 1.5 (1st in segment 1 counts 0.5, 1st in segment 2 counts 1.0); no other team is placed.");
	}

	@Test
	void teamsAreCalledByTheNamesGiven() {
		assertThat(combine(EntryPlaces.of("A", 1, 1), EntryPlaces.of("B", 2, 2)).rows()
			.get(0)
			.why((id) -> "Team " + id)
			.english()).endsWith("; ahead of Team B, with 3.0.");
	}

	@Test
	void nobodyMakesAnEmptyStanding() {
		assertThat(combine().rows()).isEmpty();
	}

	@Test
	void badInputIsRefusedByName() {
		assertRefused("duplicate-entry", "Entry 'A' is listed more than once.",
				() -> combine(EntryPlaces.of("A", 1, 1), EntryPlaces.of("B", 2, 2), EntryPlaces.of("A", 3, 3)));
		assertRefused("uneven-places",
				"Entry 'B' has 1 segment places; 2 are expected, one for each factor (empty where none was reached).",
				() -> combine(EntryPlaces.of("C", 1), EntryPlaces.of("B", 1), EntryPlaces.of("A", 2, 2)));
		assertRefused("place-out-of-range",
				"Entry 'A' has the segment place 0; a whole number from 1 to 9999 is expected.",
				() -> EntryPlaces.of("A", 0));
		assertRefused("place-out-of-range",
				"Entry 'A' has the segment place 10000; a whole number from 1 to 9999 is expected.",
				() -> EntryPlaces.of("A", null, 10000));
		assertRefused("entry-missing", "The entry must have an identifier that is not blank.",
				() -> EntryPlaces.of(" ", 1));
		assertRefused("factors-missing", "An event has 1 to 20 segments, each with a factor; got 0 factors.",
				() -> CombinationRules.ofFactors());
		assertRefused("factors-missing", "An event has 1 to 20 segments, each with a factor; got 21 factors.",
				() -> CombinationRules.ofFactors(java.util.Collections.nCopies(21, 100)));
		assertRefused("factor-out-of-range",
				"A factor must be 0.01 to 100.0 (1 to 10000 hundredths); got 0 hundredths.",
				() -> CombinationRules.ofFactors(100, 0));
		assertRefused("factor-out-of-range",
				"A factor must be 0.01 to 100.0 (1 to 10000 hundredths); got 10001 hundredths.",
				() -> CombinationRules.ofFactors(10001));
	}

	@Test
	void greatestInputDoesNotOverflow() {
		@Nullable Integer[] places = new Integer[CombinationRules.MOST_SEGMENTS];
		Arrays.fill(places, EntryPlaces.HIGHEST);
		CombinationRules rules = CombinationRules.ofFactors(java.util.Collections.nCopies(20, 10_000));
		assertThat(Combination.combine(rules, List.of(EntryPlaces.of("A", places))).rows().get(0).total())
			.isEqualTo(1_999_800_000);
	}

	private static EntryPlaces entry(String entry, EntryStatus status, @Nullable Integer... places) {
		return new EntryPlaces(entry, status, Arrays.asList(places));
	}

	private static EventStanding combine(EntryPlaces... entries) {
		return Combination.combine(SHORT_AND_FREE, List.of(entries));
	}

	private static void assertRefused(String code, String sentence, Runnable action) {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(action::run)
			.withMessage(sentence)
			.extracting(TabulationException::code)
			.isEqualTo(code);
	}

}
