package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryStatus;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.tabulation.points.PointsFixtures.BY_COMPONENTS;
import static rimebook.tabulation.points.PointsFixtures.BY_ELEMENTS;
import static rimebook.tabulation.points.PointsFixtures.performance;
import static rimebook.tabulation.points.PointsFixtures.places;
import static rimebook.tabulation.points.PointsFixtures.refusal;
import static rimebook.tabulation.points.PointsFixtures.standing;

class PointsCombinationTests {

	/**
	 * The totals of the segments are added: encyclopaedia article on the sport, section
	 * on judging.
	 */
	@Test
	void totalsAreAdded() {
		PointsEventStanding standing = combine(EntryTotals.of("A", total(2, "60.00"), total(1, "120.50")),
				EntryTotals.of("B", total(1, "61.00"), total(2, "119.00")));
		assertThat(places(standing)).containsExactly("1 A", "2 B");
		assertThat(standing.rows()).extracting(PointsEventStanding.PointsEventRow::total)
			.extracting(Points::toString)
			.containsExactly("180.50", "180.00");
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.containsExactly("1st: 180.50 points (60.00 + 120.50); ahead of B, who had 180.00, 0.50 less.",
					"2nd: 180.00 points (61.00 + 119.00); behind A, who had 180.50, 0.50 more.");
	}

	/**
	 * Equal sums go by the free skating: encyclopaedia article on the sport, section on
	 * judging.
	 */
	@Test
	void equalSumsGoByTheLastSegment() {
		PointsEventStanding standing = combine(EntryTotals.of("A", total(1, "61.00"), total(2, "119.00")),
				EntryTotals.of("B", total(2, "60.00"), total(1, "120.00")));
		assertThat(places(standing)).containsExactly("1 B", "2 A");
		assertThat(standing.rows().get(0).why((name) -> "Team " + name).english())
			.isEqualTo("1st: 180.00 points (60.00 + "
					+ "120.00); ahead of Team A, who had the same total but 119.00 in the last segment.");
	}

	/** Shared places: common practice. */
	@Test
	void equalFiguresShareThePlace() {
		PointsEventStanding standing = combine(EntryTotals.of("C", total(3, "50.00"), total(3, "100.00")),
				EntryTotals.of("B", total(1, "60.00"), total(1, "120.00")),
				EntryTotals.of("A", total(1, "60.00"), total(1, "120.00")));
		assertThat(places(standing)).containsExactly("1 A", "1 B", "3 C");
		assertThat(standing.rows()).extracting(PointsEventStanding.PointsEventRow::shared)
			.containsExactly(true, true, false);
		assertThat(standing.row("A").orElseThrow().why().english())
			.startsWith("1st, shared with B on equal figures: 180.00");
		assertThat(standing.row("Q")).isEmpty();
	}

	/**
	 * Who did not qualify, or has not skated yet, stays behind by the earlier segment.
	 */
	@Test
	void incompleteTeamsFollowInTheOrderOfTheSegmentReached() {
		PointsEventStanding standing = combine(EntryTotals.of("A", total(1, "70.00"), null),
				EntryTotals.of("B", total(4, "40.00"), total(1, "90.00")), EntryTotals.of("C", total(3, "60.00"), null),
				EntryTotals.of("D", total(2, "60.00"), null), EntryTotals.of("E", null, total(2, "80.00")),
				EntryTotals.of("F", null, null));
		assertThat(places(standing)).containsExactly("1 B", "2 E", "3 A", "4 D", "5 C", "null F");
		assertThat(standing.rows()).extracting(PointsEventStanding.PointsEventRow::complete)
			.containsExactly(true, false, false, false, false, false);
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.containsExactly("1st: 130.00 points (40.00 + 90.00); ahead of E, who did not skate every segment.",
					"2nd: 80.00 points so far; behind B, who skated every segment; ahead of A, whose last segment was "
							+ "segment 1.",
					"3rd: 70.00 points so far; behind E, whose last segment was segment 2; ahead of D, who were 2nd "
							+ "in the last segment of both.",
					"4th: 60.00 points so far; behind A, who were 1st in the last segment of both; ahead of C, who "
							+ "were 3rd in the last segment of both.",
					"5th: 60.00 points so far; behind D, who were 2nd in the last segment of both.",
					"No place yet: nothing skated so far.");
	}

	@Test
	void inAnEventOfOneSegmentItsPlacesAreTheResult() {
		PointsEventStanding standing = PointsCombination.ofStandings(DisqualifiedPlaces.CLOSE_ALL_PLACES,
				List.of(standing(BY_COMPONENTS, performance("A", "30.00", "8.00"), performance("B", "29.00", "9.00"))));
		assertThat(standing.segments()).isEqualTo(1);
		assertThat(places(standing)).containsExactly("1 B", "2 A");
		assertThat(standing.rows().get(1).why().english())
			.isEqualTo("2nd: 38.00 points; behind B, who had the same total but were 1st in the segment.");
	}

	@Test
	void standingsAreCombinedWithTheLatestStatus() {
		PointsStanding first = standing(BY_ELEMENTS, performance("A", "30.00", "8.00"),
				performance("B", "29.00", "9.00"), performance("C", "20.00", "7.00"), performance("D", "19.00", "7.00"),
				Performance.without("E", EntryStatus.WITHDRAWN));
		PointsStanding last = standing(BY_COMPONENTS, performance("B", "40.00", "9.00"),
				performance("A", "38.00", "9.00"), Performance.without("C", EntryStatus.NOT_FINISHED));
		PointsEventStanding standing = PointsCombination.ofStandings(DisqualifiedPlaces.CLOSE_ALL_PLACES,
				List.of(first, last));
		assertThat(places(standing)).containsExactly("1 B", "2 A", "3 D", "null C", "null E");
		assertThat(standing.row("B").orElseThrow().segments()).containsExactly(total(2, "38.00"), total(1, "49.00"));
		assertThat(standing.row("C").orElseThrow().why().english())
			.isEqualTo("No place: did not finish the programme.");
		assertThat(standing.row("E").orElseThrow().status()).isEqualTo(EntryStatus.WITHDRAWN);
	}

	/** A setting; the three ways are from memory. */
	@ParameterizedTest
	@CsvSource({ "CLOSE_ALL_PLACES,2", "CLOSE_FINAL_PLACES,2", "LEAVE_GAPS,3" })
	void placesBehindADisqualifiedTeamGoByTheRules(DisqualifiedPlaces policy, int place) {
		PointsEventStanding standing = PointsCombination.combine(1, policy,
				List.of(EntryTotals.of("A", total(1, "70.00")),
						new EntryTotals("B", EntryStatus.DISQUALIFIED, List.of(total(2, "60.00"))),
						new EntryTotals("W", EntryStatus.WITHDRAWN, List.of(total(2, "65.00"))),
						new EntryTotals("Y", EntryStatus.DISQUALIFIED, nothing()),
						EntryTotals.of("C", total(3, "50.00"))));
		assertThat(places(standing)).containsExactly("1 A", place + " C", "null W", "null B", "null Y");
	}

	@Test
	void whatDoesNotFitTogetherIsRefused() {
		EntryTotals one = EntryTotals.of("A", total(1, "70.00"));
		assertThat(refusal(() -> combine(EntryTotals.of("B", null, null), one))).hasMessageContaining("'A'")
			.extracting("code")
			.isEqualTo("uneven-segments");
		assertThat(refusal(() -> PointsCombination.combine(1, DisqualifiedPlaces.CLOSE_ALL_PLACES, List.of(one, one)))
			.code()).isEqualTo("duplicate-entry");
		assertThat(refusal(() -> EntryTotals.of(" ")).code()).isEqualTo("entry-missing");
		assertThat(PointsCombination.combine(20, DisqualifiedPlaces.CLOSE_ALL_PLACES, List.of()).rows()).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(ints = { 0, 21, -1 })
	void numberOfSegmentsIsLimited(int segments) {
		assertThat(refusal(() -> PointsCombination.combine(segments, DisqualifiedPlaces.CLOSE_ALL_PLACES, List.of()))
			.code()).isEqualTo("segments-out-of-range");
	}

	@Test
	void segmentTotalsAreChecked() {
		assertThat(List.of(0, 10_000))
			.allSatisfy((place) -> assertThat(refusal(() -> new EntryTotals.SegmentTotal(place, Points.ZERO)).code())
				.isEqualTo("place-out-of-range"));
		assertThat(List.of(100_000_001, -100_000_001))
			.allSatisfy((total) -> assertThat(refusal(() -> new EntryTotals.SegmentTotal(1, new Points(total))).code())
				.isEqualTo("total-out-of-range"));
		assertThat(new EntryTotals.SegmentTotal(9999, new Points(-100_000_000)).place()).isEqualTo(9999);
	}

	private static List<EntryTotals.@Nullable SegmentTotal> nothing() {
		List<EntryTotals.@Nullable SegmentTotal> nothing = new ArrayList<>();
		nothing.add(null);
		return nothing;
	}

	private static EntryTotals.SegmentTotal total(int place, String points) {
		return new EntryTotals.SegmentTotal(place, Points.parse(points));
	}

	private static PointsEventStanding combine(EntryTotals... entries) {
		return PointsCombination.combine(2, DisqualifiedPlaces.CLOSE_ALL_PLACES, List.of(entries));
	}

}
