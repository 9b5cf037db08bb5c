package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryStatus;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.tabulation.points.PointsFixtures.BY_COMPONENTS;
import static rimebook.tabulation.points.PointsFixtures.BY_ELEMENTS;
import static rimebook.tabulation.points.PointsFixtures.performance;
import static rimebook.tabulation.points.PointsFixtures.refusal;
import static rimebook.tabulation.points.PointsFixtures.standing;

class PointsNeededTests {

	private final Random random = new Random(20_260_307);

	/**
	 * Places and ties as in the rules of the 2018 team event; the figures are
	 * constructed.
	 */
	@Test
	void saysWhatEachPlaceOfASegmentTakes() {
		PointsStanding standing = standing(BY_ELEMENTS, performance("A", "30.00", "8.00"),
				performance("B", "29.00", "8.00"), performance("C", "29.00", "8.00"), performance("D", "20.00", "7.00"),
				Performance.without("E", EntryStatus.WITHDRAWN));
		assertThat(PointsNeeded.inSegment(standing)).extracting((row) -> row.words().english())
			.containsExactly("1st needs 38.01, or 38.00 with at least 30.00 for the elements.",
					"2nd needs 37.01, or 37.00 with at least 29.00 for the elements.",
					"4th needs 27.01, or 27.00 with at least 20.00 for the elements.");
		assertThat(PointsNeeded.inSegment(standing(BY_COMPONENTS, performance("A", "30.00", "8.00"))))
			.containsExactly(new PointsNeeded.ScoreNeeded(1, new Points(3801),
					new PointsNeeded.ScoreNeeded.OnEqualTotal(new Points(3800), Criterion.COMPONENT_POINTS,
							new Points(800))))
			.extracting((row) -> row.words().english())
			.containsExactly("1st needs 38.01, or 38.00 with at least 8.00 for the components.");
		assertThat(PointsNeeded.inSegment(standing(BY_ELEMENTS))).isEmpty();
	}

	/** Otherwise tied: ISU rules for the team event, Games of 2018. */
	@Test
	void withoutATieBreakTheSameTotalIsEnough() {
		assertThat(PointsNeeded
			.inSegment(standing(PointsFixtures.rules(SegmentRules.TieBreak.NONE), performance("A", "30.00", "8.00"))))
			.containsExactly(new PointsNeeded.ScoreNeeded(1, new Points(3800), null))
			.extracting((row) -> row.words().english())
			.containsExactly("1st needs 38.00.");
	}

	/**
	 * Equal sums go by the free skating (encyclopaedia article on the sport, section on
	 * judging); the figures are constructed.
	 */
	@Test
	void saysWhatEachPlaceOfAnEventTakes() {
		PointsEventStanding standing = event(EntryTotals.of("A", total("70.00"), total("140.00")),
				EntryTotals.of("B", total("60.00"), total("130.00")), EntryTotals.of("C", total("65.00"), null),
				EntryTotals.of("D", total("80.00"), null));
		// C ties with A at 145.00, where its free skating is the better one
		assertThat(PointsNeeded.inEvent(standing, "C")).containsExactly(
				new PointsNeeded.ScoreNeeded(1, new Points(14_500), null),
				new PointsNeeded.ScoreNeeded(2, new Points(12_501), null));
		assertThat(PointsNeeded.inEvent(standing, "D")).extracting((row) -> row.words().english())
			.containsExactly("1st needs 130.01.", "2nd needs 110.01.");
	}

	@Test
	void anyTotalIsEnoughForAPlaceAlreadyCertain() {
		PointsEventStanding standing = event(EntryTotals.of("A", total("1.00"), total("2.00")),
				EntryTotals.of("C", total("65.00"), null));
		assertThat(PointsNeeded.inEvent(standing, "C")).extracting((row) -> row.words().english())
			.containsExactly("1st is reached with any total.");
		assertThat(new PointsNeeded.ScoreNeeded(2, Points.ZERO, null).words().english())
			.isEqualTo("2nd is reached with any total.");
		assertThat(new PointsNeeded.ScoreNeeded(2, new Points(1), null).words().english()).isEqualTo("2nd needs 0.01.");
	}

	@Test
	void thereMustBeSomethingToNeed() {
		PointsEventStanding standing = event(EntryTotals.of("A", total("70.00"), total("140.00")),
				EntryTotals.of("B", null, null), EntryTotals.of("C", null, total("65.00")),
				new EntryTotals("W", EntryStatus.WITHDRAWN, EntryTotals.of("W", total("1.00"), null).segments()));
		assertThat(refusal(() -> PointsNeeded.inEvent(standing, "Z")).code()).isEqualTo("entry-unknown");
		assertThat(List.of("A", "B", "C", "W"))
			.allSatisfy((entry) -> assertThat(refusal(() -> PointsNeeded.inEvent(standing, entry)).code())
				.isEqualTo("nothing-needed"));
		PointsEventStanding three = PointsCombination.combine(3, DisqualifiedPlaces.CLOSE_ALL_PLACES,
				List.of(EntryTotals.of("A", total("70.00"), null, null)));
		assertThat(refusal(() -> PointsNeeded.inEvent(three, "A")).code()).isEqualTo("nothing-needed");
	}

	/** Places left empty by the rule set: from memory. */
	@Test
	void aDisqualifiedTeamsEmptyPlaceIsNotPromised() {
		PointsEventStanding standing = PointsCombination.combine(2, DisqualifiedPlaces.LEAVE_GAPS,
				List.of(EntryTotals.of("A", total("70.00"), total("140.00")),
						new EntryTotals("B", EntryStatus.DISQUALIFIED, List.of(total("60.00"), total("130.00"))),
						EntryTotals.of("C", total("50.00"), total("130.00")),
						EntryTotals.of("D", total("50.00"), null)));
		assertThat(PointsNeeded.inEvent(standing, "D")).extracting(PointsNeeded.ScoreNeeded::place)
			.containsExactly(1, 3);
	}

	/**
	 * What is promised holds when the team then skates exactly that, and no less does.
	 */
	@Test
	void everySegmentFigureIsTheSmallestThatIsEnough() {
		for (int i = 0; i < 300; i++) {
			SegmentRules rules = PointsFixtures.rules(SegmentRules.TieBreak.values()[i % 3]);
			List<Performance> skated = performances(1 + this.random.nextInt(5));
			for (PointsNeeded.ScoreNeeded needed : PointsNeeded.inSegment(PointsTabulation.standing(rules, skated))) {
				assertThat(List.of(new Points(25), new Points(1000)))
					.allMatch((components) -> placeOf(rules, skated, needed.total(), components) <= needed.place());
				PointsNeeded.ScoreNeeded.OnEqualTotal orElse = needed.orElse();
				if (orElse == null) {
					Points oneLess = needed.total().minus(new Points(1));
					assertThat(placeOf(rules, skated, oneLess, new Points(25))).isGreaterThan(needed.place());
				}
				else {
					checkEqualTotal(rules, skated, needed.place(), orElse);
				}
			}
		}
	}

	/**
	 * With the equal total, the part must have what is said, and 0.25 less is not enough.
	 */
	private void checkEqualTotal(SegmentRules rules, List<Performance> skated, int place,
			PointsNeeded.ScoreNeeded.OnEqualTotal equal) {
		boolean byElements = equal.part() == Criterion.ELEMENT_POINTS;
		for (int more : List.of(-25, 0, 25)) {
			Points part = equal.atLeast().plus(new Points(more));
			Points components = byElements ? equal.total().minus(part) : part;
			int reached = placeOf(rules, skated, equal.total(), components);
			assertThat(reached <= place).isEqualTo(more >= 0);
		}
	}

	/** Let a team join that has the total with so much of it for the components. */
	private static int placeOf(SegmentRules rules, List<Performance> skated, Points total, Points components) {
		List<Performance> all = new ArrayList<>(skated);
		all.add(performance("new", total.minus(components).toString(), components.toString()));
		return PointsTabulation.standing(rules, all).row("new").map(PointsStanding.ScoredEntry::place).orElseThrow();
	}

	private List<Performance> performances(int count) {
		List<Performance> performances = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			performances.add(performance("E" + i, new Points(2000 + 25 * this.random.nextInt(4)).toString(),
					new Points(700 + 25 * this.random.nextInt(4)).toString()));
		}
		return performances;
	}

	@Test
	void everyEventFigureIsTheSmallestThatIsEnough() {
		for (int i = 0; i < 500; i++) {
			List<EntryTotals> entries = new ArrayList<>();
			for (int j = 0; j < 1 + this.random.nextInt(5); j++) {
				entries.add(EntryTotals.of("E" + j, few(), few()));
			}
			EntryTotals.SegmentTotal carried = few();
			List<EntryTotals> before = new ArrayList<>(entries);
			before.add(EntryTotals.of("new", carried, null));
			for (PointsNeeded.ScoreNeeded needed : PointsNeeded.inEvent(event(before.toArray(EntryTotals[]::new)),
					"new")) {
				assertThat(placeOf(entries, carried, needed.total())).isLessThanOrEqualTo(needed.place());
				assertThat(placeOf(entries, carried, needed.total().minus(new Points(1))))
					.isGreaterThan(needed.place());
			}
		}
	}

	private int placeOf(List<EntryTotals> entries, EntryTotals.SegmentTotal carried, Points last) {
		List<EntryTotals> all = new ArrayList<>(entries);
		all.add(EntryTotals.of("new", carried, new EntryTotals.SegmentTotal(1, last)));
		return event(all.toArray(EntryTotals[]::new)).row("new")
			.map(PointsEventStanding.PointsEventRow::place)
			.orElseThrow();
	}

	private EntryTotals.SegmentTotal few() {
		return new EntryTotals.SegmentTotal(1, new Points(5000 + this.random.nextInt(4)));
	}

	private static EntryTotals.SegmentTotal total(String points) {
		return new EntryTotals.SegmentTotal(1, Points.parse(points));
	}

	private static PointsEventStanding event(EntryTotals... entries) {
		return PointsCombination.combine(2, DisqualifiedPlaces.CLOSE_ALL_PLACES, List.of(entries));
	}

}
