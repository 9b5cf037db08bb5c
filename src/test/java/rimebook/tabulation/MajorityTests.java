package rimebook.tabulation;

import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** What is said about places by majority, criterion by criterion. */
class MajorityTests {

	private static final PlacementRules RULES = PlacementRules.majority(SegmentKind.FREE);

	@Test
	void sizeOfTheMajorityIsSaidWhereItDecides() {
		SegmentStanding standing = sheet("majority-greater-majority.csv");
		assertThat(standing.judges()).isEqualTo(5);
		assertThat(standing.method()).isEqualTo(PlacementRules.PlacementMethod.MAJORITY);
		assertThat(why(standing, "A")).isEqualTo(
				"1st: four of five judges had them 2nd or better; ahead of B, who had three judges for 2nd or better.");
		assertThat(why(standing, "B")).isEqualTo("2nd: three of five judges had them 2nd or better; "
				+ "behind A, who had four judges for 2nd or better; ahead of C, whose majority was for 3rd or better.");
		assertThat(standing.row("A").orElseThrow().reason()).isEqualTo(
				new Reason(List.of(), null, new Reason.Comparison(List.of("B"), 2, Criterion.SIZE_OF_MAJORITY, 4, 3)));
	}

	/**
	 * Order of the criteria: 6.0 format as on the event pages of the 1998 Games,
	 * sports-reference.com; the sheet is constructed.
	 */
	@Test
	void totalOfTheMajorityIsSaidWhereItDecides() {
		SegmentStanding standing = sheet("majority-total-of-majority.csv");
		assertThat(why(standing, "A")).isEqualTo("1st: three of five judges had them 2nd or better, "
				+ "total of those ordinals 5; ahead of B, who had the same majority with a total of 6.");
		assertThat(why(standing, "B")).isEqualTo("2nd: three of five judges had them 2nd or better, "
				+ "total of those ordinals 6; behind A, who had the same majority with a total of 5; "
				+ "ahead of C, whose majority was for 3rd or better.");
	}

	/**
	 * Order of the criteria: 6.0 format as on the event pages of the 1998 Games,
	 * sports-reference.com; the sheet is constructed.
	 */
	@Test
	void totalOfAllOrdinalsIsSaidWhereItDecides() {
		SegmentStanding standing = sheet("majority-total-ordinals.csv");
		assertThat(why(standing, "A")).isEqualTo("1st: three of five judges had them 2nd or better, "
				+ "total of those ordinals 4, total of all ordinals 10; "
				+ "ahead of B, who had the same majority and total but 11 over all ordinals.");
		assertThat(why(standing, "B")).startsWith("2nd: three of five judges had them 2nd or better, "
				+ "total of those ordinals 4, total of all ordinals 11; "
				+ "behind A, who had the same majority and total but 10 over all ordinals; ahead of C");
	}

	/**
	 * Full ties share the place and the next is not awarded: common practice, as with
	 * shared ordinals (Washington Post, 23 February 1980).
	 */
	@Test
	void sharedPlaceIsSaidWithBothTotals() {
		SegmentStanding standing = sheet("majority-complete-tie.csv");
		assertThat(standing.rows()).extracting(PlacedEntry::shared).containsExactly(false, true, true, false);
		assertThat(why(standing, "B")).isEqualTo("2nd, shared with C on equal figures: "
				+ "three of five judges had them 2nd or better, total of those ordinals 5, total of all ordinals 12; "
				+ "behind A, whose majority was for 1st; ahead of D, whose majority was for 3rd or better.");
		assertThat(why(standing, "D")).isEqualTo("4th: three of five judges had them 3rd or better; "
				+ "behind B and C, whose majority was for 2nd or better.");
		assertThat(standing.row("C").orElseThrow().reason().sharedWith()).containsExactly("B");
	}

	@Test
	void unanimousPanelAndSingleJudgeAreSaidSo() {
		assertThat(PlacementTabulation.ofOrdinals(RULES, List.of(EntryOrdinals.of("A", 1, 1, 1)))
			.rows()
			.get(0)
			.why()
			.english()).isEqualTo("1st: all three judges had them 1st; no other team is placed.");
		assertThat(
				PlacementTabulation.ofOrdinals(RULES, List.of(EntryOrdinals.of("A", 2))).rows().get(0).why().english())
			.isEqualTo("1st: the only judge had them 2nd or better; no other team is placed.");
	}

	/** Shared places: common practice. */
	@Test
	void teamsSharingTheOnlyPlaceAreNotSaidToBeAlone() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(RULES,
				List.of(EntryOrdinals.of("C", 1), EntryOrdinals.of("A", 1), EntryOrdinals.of("B", 1)));
		assertThat(SheetFixtures.places(standing)).containsExactly("1 A", "1 B", "1 C");
		assertThat(standing.rows().get(0).why().english()).isEqualTo("1st, shared with B and C on equal figures: "
				+ "the only judge had them 1st, total of those ordinals 1, total of all ordinals 1.");
	}

	@Test
	void teamsAreCalledByTheNamesGiven() {
		PlacedEntry second = sheet("majority-greater-majority.csv").row("B").orElseThrow();
		assertThat(second.why((id) -> "Team " + id).english()).contains("; behind Team A, who",
				"; ahead of Team C, whose");
	}

	/**
	 * 1998 Europeans, ladies, short programme, two teams of the field: the order of two
	 * earlier ones turns when a later one is marked.
	 */
	@Test
	void laterTeamTurnsTheOrderOfEarlierOnes() {
		SegmentStanding before = PlacementTabulation.ofOrdinals(RULES, List
			.of(EntryOrdinals.of("A", 1, 3, 2, 3, 2, 2, 2, 2, 3), EntryOrdinals.of("B", 2, 1, 3, 2, 3, 5, 1, 3, 2)));
		SegmentStanding after = PlacementTabulation.ofOrdinals(RULES, List
			.of(EntryOrdinals.of("A", 1, 4, 3, 3, 3, 2, 2, 3, 3), EntryOrdinals.of("B", 2, 1, 4, 2, 4, 5, 1, 4, 2)));
		assertThat(SheetFixtures.places(before)).containsExactly("1 A", "2 B");
		assertThat(SheetFixtures.places(after)).containsExactly("1 B", "2 A");
		assertThat(why(before, "A")).contains("six of nine judges had them 2nd or better");
		assertThat(why(after, "A")).contains("eight of nine judges had them 3rd or better");
		assertThat(why(after, "B")).contains("five of nine judges had them 2nd or better");
	}

	private static SegmentStanding sheet(String name) {
		return PlacementTabulation.ofOrdinals(RULES, SheetFixtures.sheet(name).ordinals());
	}

	private static String why(SegmentStanding standing, String entry) {
		return standing.row(entry).orElseThrow().why().english();
	}

	/** A limit of this module; panels have 3 to 9 judges (common practice). */
	@Test
	void aPanelHasNinetyNineJudgesAtMost() {
		assertThat(PlacementTabulation.ofOrdinals(RULES, List.of(new EntryOrdinals("A", Collections.nCopies(99, 9999))))
			.judges()).isEqualTo(99);
		assertThatThrownBy(() -> PlacementTabulation.ofOrdinals(RULES,
				List.of(new EntryOrdinals("A", Collections.nCopies(101, 9999)))))
			.hasFieldOrPropertyWithValue("code", "panel-out-of-range");
	}

}
