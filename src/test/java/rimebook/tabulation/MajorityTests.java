package rimebook.tabulation;

import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** The constructed five-judge panels of the rules, each needing one more criterion. */
class MajorityTests {

	private static final PlacementRules RULES = PlacementRules.majority(SegmentKind.FREE);

	@Test
	void greaterMajorityGoesFirst() {
		SegmentStanding standing = tabulate(EntryOrdinals.of("A", 2, 4, 1, 2, 2), EntryOrdinals.of("B", 1, 2, 3, 3, 1),
				EntryOrdinals.of("C", 4, 3, 2, 1, 4), EntryOrdinals.of("D", 3, 1, 4, 4, 3));
		assertThat(places(standing)).containsExactly("1 A", "2 B", "3 C", "4 D");
		assertThat(standing.row("A").orElseThrow().figures()).isEqualTo(new MajorityFigures(200, 4, 700, 1100));
		assertThat(standing.row("A").orElseThrow().why()).isEqualTo(
				"1st: four of five judges had them 2nd or better; ahead of B, who had three judges for 2nd or better.");
		assertThat(standing.row("B").orElseThrow().why()).isEqualTo("2nd: three of five judges had them 2nd or better; "
				+ "behind A, who had four judges for 2nd or better; ahead of C, whose majority was for 3rd or better.");
	}

	@Test
	void lowerTotalOfMajorityGoesFirst() {
		SegmentStanding standing = tabulate(EntryOrdinals.of("A", 1, 4, 4, 2, 2), EntryOrdinals.of("B", 2, 2, 2, 3, 3),
				EntryOrdinals.of("C", 3, 1, 3, 4, 1), EntryOrdinals.of("D", 4, 3, 1, 1, 4));
		assertThat(places(standing)).containsExactly("1 A", "2 B", "3 C", "4 D");
		assertThat(standing.row("A").orElseThrow().why())
			.isEqualTo("1st: three of five judges had them 2nd or better, total of those ordinals 5; "
					+ "ahead of B, who had the same majority with a total of 6.");
	}

	@Test
	void lowerTotalOrdinalsGoFirst() {
		SegmentStanding standing = tabulate(EntryOrdinals.of("A", 1, 2, 3, 3, 1), EntryOrdinals.of("B", 3, 1, 1, 2, 4),
				EntryOrdinals.of("C", 4, 3, 2, 1, 2), EntryOrdinals.of("D", 2, 4, 4, 4, 3));
		assertThat(places(standing)).containsExactly("1 A", "2 B", "3 C", "4 D");
		assertThat(standing.row("B").orElseThrow().why())
			.startsWith("2nd: three of five judges had them 2nd or better, total of those ordinals 4, "
					+ "total of all ordinals 11; behind A, who had the same majority and total but 10 over all ordinals");
	}

	@Test
	void equalInEverythingSharesThePlaceAndSkipsTheNext() {
		SegmentStanding standing = tabulate(EntryOrdinals.of("D", 4, 3, 2, 3, 4), EntryOrdinals.of("C", 2, 1, 3, 4, 2),
				EntryOrdinals.of("B", 3, 2, 4, 2, 1), EntryOrdinals.of("A", 1, 4, 1, 1, 3));
		assertThat(places(standing)).containsExactly("1 A", "2 B", "2 C", "4 D");
		assertThat(standing.rows()).extracting(PlacedEntry::shared).containsExactly(false, true, true, false);
		assertThat(standing.row("B").orElseThrow().why()).isEqualTo("2nd, shared with C on equal figures: "
				+ "three of five judges had them 2nd or better, total of those ordinals 5, total of all ordinals 12; "
				+ "behind A, whose majority was for 1st; ahead of D, whose majority was for 3rd or better.");
		assertThat(standing.row("D").orElseThrow().why()).isEqualTo(
				"4th: three of five judges had them 3rd or better; behind B and C, whose majority was for 2nd or better.");
	}

	private static SegmentStanding tabulate(EntryOrdinals... entries) {
		return PlacementTabulation.ofOrdinals(RULES, List.of(entries));
	}

	private static List<String> places(SegmentStanding standing) {
		return standing.rows().stream().map((row) -> row.place() + " " + row.entry()).toList();
	}

}
