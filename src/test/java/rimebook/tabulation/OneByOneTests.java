package rimebook.tabulation;

import java.util.List;
import java.util.NoSuchElementException;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class OneByOneTests {

	private static final PlacementRules RULES = PlacementRules.oneByOne(SegmentKind.FREE);

	@Test
	void allThirtyCellsOfThePublishedTableAreReproduced() {
		SheetFixtures published = SheetFixtures.sheet("one-by-one-six.csv");
		OneByOneTable table = OneByOneTable.of(RULES, six());
		assertThat(table.entries()).containsExactly("A", "B", "C", "D", "E", "F");
		int cells = 0;
		for (CSVRecord row : published.rows()) {
			for (String rival : table.entries()) {
				if (!rival.equals(row.get("entry"))) {
					OneByOneTable.Cell cell = table.cell(row.get("entry"), rival);
					assertThat(cell.win() / 100 + "/" + cell.judgesInFavour()).isEqualTo(row.get(rival));
					cells++;
				}
			}
		}
		assertThat(cells).isEqualTo(30);
	}

	@Test
	void winsJudgesInFavourAndPlacesAreThosePublished() {
		SheetFixtures published = SheetFixtures.sheet("one-by-one-six.csv");
		SegmentStanding standing = six();
		assertThat(SheetFixtures.places(standing)).isEqualTo(published.places("place"));
		assertThat(published.rows())
			.allSatisfy((row) -> assertThat(standing.row(row.get("entry")).orElseThrow().figures())
				.isEqualTo(new Figures.OneByOneFigures(Integer.parseInt(row.get("wins")) * 100,
						Integer.parseInt(row.get("in_favour")))));
	}

	@Test
	void sentenceSaysWinsAndWhereNeededJudgesInFavour() {
		SegmentStanding standing = six();
		assertThat(standing.method()).isEqualTo(PlacementRules.PlacementMethod.ONE_BY_ONE);
		assertThat(standing.row("A").orElseThrow().why().english())
			.isEqualTo("1st: won five comparisons with 44 judges in favour; ahead of C, who won four.");
		assertThat(standing.row("D").orElseThrow().why().english()).isEqualTo(
				"5th: won one comparison with 19 judges in favour; behind B, who won two; ahead of F, who won none.");
		assertThat(standing.row("F").orElseThrow().why().english())
			.isEqualTo("6th: won no comparisons with ten judges in favour; behind D, who won one.");
	}

	/**
	 * Equal wins go by judges in favour: One by One, iceskatingintnl.com, 1997; the panel
	 * is constructed.
	 */
	@Test
	void circleOfWinsIsDecidedByJudgesInFavour() {
		SegmentStanding standing = tabulate(RULES, EntryOrdinals.of("A", 1, 1, 2, 2, 3),
				EntryOrdinals.of("B", 2, 2, 3, 3, 1), EntryOrdinals.of("C", 3, 3, 1, 1, 2));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "2 C", "3 B");
		assertThat(standing.rows()).extracting(PlacedEntry::figures)
			.containsExactly(new Figures.OneByOneFigures(100, 6), new Figures.OneByOneFigures(100, 5),
					new Figures.OneByOneFigures(100, 4));
		assertThat(standing.rows().get(1).why().english())
			.isEqualTo("2nd: won one comparison with five judges in favour; "
					+ "behind A, who won as many with six judges in favour; ahead of B, who won as many with four judges in favour.");
	}

	/**
	 * Still equal, still tied: One by One, iceskatingintnl.com, 1997; the panel is
	 * constructed.
	 */
	@Test
	void circleWithoutAnyDifferenceSharesThePlace() {
		SegmentStanding standing = tabulate(RULES, EntryOrdinals.of("A", 1, 2, 3), EntryOrdinals.of("B", 2, 3, 1),
				EntryOrdinals.of("C", 3, 1, 2), EntryOrdinals.of("D", 4, 4, 4));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "1 B", "1 C", "4 D");
		assertThat(standing.rows().get(2).why().english())
			.isEqualTo("1st, shared with A and B on equal figures: won two comparisons with six judges in favour; "
					+ "ahead of D, who won none.");
	}

	/**
	 * A majority of the judges makes a win (One by One, iceskatingintnl.com, 1997); for
	 * an even comparison no rule text was found, so it is a setting.
	 */
	@ParameterizedTest
	@CsvSource({ "BOTH_WIN, 100, one comparison", "HALF_EACH, 50, 0.5 comparisons", "NEITHER, 0, no comparisons" })
	void evenComparisonCountsByTheRules(PlacementRules.EqualJudgesInFavour policy, int wins, String words) {
		PlacementRules rules = RULES.withEqualJudgesInFavour(policy);
		SegmentStanding standing = tabulate(rules, EntryOrdinals.of("A", 1, 1, 2), EntryOrdinals.of("B", 1, 2, 1));
		assertThat(standing.rows()).extracting(PlacedEntry::figures)
			.containsExactly(new Figures.OneByOneFigures(wins, 2), new Figures.OneByOneFigures(wins, 2));
		assertThat(standing.rows().get(0).why().english())
			.isEqualTo("1st, shared with B on equal figures: won " + words + " with two judges in favour.");
		assertThat(OneByOneTable.of(rules, standing).cell("A", "B")).isEqualTo(new OneByOneTable.Cell(wins, 2));
	}

	/**
	 * A setting, since no rule text was found for an even comparison; half a win is from
	 * memory. The sentence is our own.
	 */
	@Test
	void rivalWithHalfAWinIsSaidSo() {
		SegmentStanding standing = tabulate(RULES.withEqualJudgesInFavour(PlacementRules.EqualJudgesInFavour.HALF_EACH),
				EntryOrdinals.of("A", 1, 1, 2), EntryOrdinals.of("B", 1, 2, 1), EntryOrdinals.of("C", 3, 3, 3));
		assertThat(standing.row("C").orElseThrow().why().english())
			.isEqualTo("3rd: won no comparisons with no judges in favour; behind A and B, who won 1.5.");
	}

	/** 2002 Olympics, ladies, free skating: 15th and 16th of 23, among themselves. */
	@Test
	void methodsPartWhereTheyPartedInPublishedResults() {
		EntryOrdinals fifteenth = EntryOrdinals.of("A", 12, 17, 17, 13, 11, 16, 14, 15, 13);
		EntryOrdinals sixteenth = EntryOrdinals.of("B", 16, 16, 9, 14, 14, 9, 16, 16, 12);
		assertThat(SheetFixtures.places(tabulate(RULES, fifteenth, sixteenth))).containsExactly("1 A", "2 B");
		assertThat(SheetFixtures.places(tabulate(PlacementRules.majority(SegmentKind.FREE), fifteenth, sixteenth)))
			.containsExactly("1 B", "2 A");
	}

	@Test
	void tableComparesAlsoAStandingMadeByMajority() {
		SegmentStanding majority = PlacementTabulation.ofOrdinals(PlacementRules.majority(SegmentKind.FREE),
				SheetFixtures.sheet("majority-six.csv").ordinals());
		assertThat(OneByOneTable.of(RULES, majority).cell("B", "F")).isEqualTo(new OneByOneTable.Cell(100, 6));
	}

	@Test
	void tableLeavesOutTeamsWithoutOrdinals() {
		SegmentStanding standing = PlacementTabulation.ofCards(RULES,
				List.of(EntryCards.skated("A", List.of(new CardMarks(500, 500))),
						EntryCards.without("B", EntryStatus.WITHDRAWN)));
		OneByOneTable table = OneByOneTable.of(RULES, standing);
		assertThat(table.entries()).containsExactly("A");
		assertThatExceptionOfType(NoSuchElementException.class).isThrownBy(() -> table.cell("A", "B"))
			.withMessage("No entry 'B' in the table");
	}

	private static SegmentStanding six() {
		return PlacementTabulation.ofOrdinals(RULES, SheetFixtures.sheet("majority-six.csv").ordinals());
	}

	private static SegmentStanding tabulate(PlacementRules rules, EntryOrdinals... entries) {
		return PlacementTabulation.ofOrdinals(rules, List.of(entries));
	}

}
