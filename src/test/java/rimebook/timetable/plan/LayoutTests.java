package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** Times that follow from a plan, and what is warned about, by hand-made days. */
class LayoutTests {

	private static final Programme JUNIORS = Days.programme(Days.segment("Short", "Junior", 170, 4));

	@Test
	void blocksFollowOneAnother() {
		Laid laid = Layout
			.of(Days.plan(Days.block("Doors", Block.Kind.DOORS, 30), Days.block("Meeting", Block.Kind.MEETING, 15),
					Days.skated("Short"), Days.block("Lunch", Block.Kind.BREAK, 45)), JUNIORS);
		// A team: warm-up 1:00, to the starting position 1:00, 2:50, leaving 0:30, marks
		// 1:00.
		assertThat(Days.begins(laid)).containsExactly("09:00", "09:30", "09:45", "10:10");
		assertThat(laid.blocks().get(2).teams()).extracting((slot) -> Duration.between(slot.begins(), slot.ends()))
			.containsOnly(Duration.ofSeconds(380));
		assertThat(laid.blocks().get(2).ends()).isEqualTo(laid.blocks().get(3).begins());
		assertThat(laid.warnings()).isEmpty();
	}

	@Test
	void whatIsMovedMovesAllAfterItUnlessAnchored() {
		Block lunch = Days.block("Lunch", Block.Kind.BREAK, 45);
		Block medals = Days.anchored(Days.block("Medals", Block.Kind.CEREMONY, 20), "13:00");
		Plan plan = Days.plan(Days.block("Practice", Block.Kind.PRACTICE, 30), lunch,
				Days.block("More", Block.Kind.PRACTICE, 30), medals, Days.block("End", Block.Kind.BREAK, 5));
		assertThat(Days.begins(Layout.of(plan, Days.programme()))).containsExactly("09:00", "09:30", "10:15", "13:00",
				"13:20");
		assertThat(Days.begins(Layout.of(plan.with(lunch, 0), Days.programme()))).containsExactly("09:00", "09:45",
				"10:15", "13:00", "13:20");
		assertThat(Days.begins(Layout.of(plan.without(lunch.id()), Days.programme()))).containsExactly("09:00", "09:30",
				"13:00", "13:20");
	}

	@Test
	void anOverrunAnchorIsWarnedAbout() {
		Laid laid = Layout.of(Days.plan(Days.block("Lunch", Block.Kind.BREAK, 95),
				Days.anchored(Days.block("Medals", Block.Kind.CEREMONY, 20), "10:15")), Days.programme());
		assertThat(Days.begins(laid)).containsExactly("09:00", "10:35");
		assertThat(Days.why(laid, Warning.Kind.OVERRUN)).containsExactly(
				"Medals begins at 10:35 although it is anchored at 10:15: what is before it takes 20 minutes too long.");
	}

	@Test
	void whatIsBesideTheIceTakesNoneOfItsTime() {
		Block meeting = Days.block("Meeting", Block.Kind.MEETING, 20);
		Block aside = new Block(meeting.id(), Days.MAIN, meeting.kind(), "Meeting", 1200,
				new Block.Timing(LocalTime.of(9, 10), 0, true), null);
		Laid laid = Layout.of(Days.plan(aside, Days.block("Practice", Block.Kind.PRACTICE, 30)), Days.programme());
		assertThat(Days.begins(laid)).containsExactly("09:10", "09:00");
	}

	@Test
	void aGapIsKeptFreeFromTheEndOfWhatIsBefore() {
		Block medals = Days.block("Medals", Block.Kind.CEREMONY, 20);
		Block later = new Block(medals.id(), Days.MAIN, medals.kind(), "Medals", 1200,
				new Block.Timing(null, 600, false), null);
		Laid laid = Layout.of(Days.plan(Days.block("Lunch", Block.Kind.BREAK, 30), later), Days.programme());
		assertThat(Days.begins(laid)).containsExactly("09:00", "09:40");
		Block anchored = new Block(medals.id(), Days.MAIN, medals.kind(), "Medals", 1200,
				new Block.Timing(LocalTime.of(9, 35), 600, false), null);
		Laid overrun = Layout.of(Days.plan(Days.block("Lunch", Block.Kind.BREAK, 30), anchored), Days.programme());
		assertThat(Days.begins(overrun)).containsExactly("09:00", "09:40");
		assertThat(Days.why(overrun, Warning.Kind.OVERRUN)).hasSize(1);
	}

	@Test
	void daysDoNotDisturbEachOther() {
		Plan.Place sunday = new Plan.Place(Days.DAY.plusDays(1), 0);
		Programme both = Days.programme(Days.segment("Short", "Junior", 170, 2),
				Days.segment("Free", "Junior", 240, 2));
		Plan plan = new Plan(List.of("Main"), List.of(Days.sheet(sunday), Days.sheet(Days.MAIN)), List
			.of(Days.skated("Free").at(sunday), Days.block("Doors", Block.Kind.DOORS, 30), Days.skated("Short")),
				PlanRules.USUAL);
		Laid laid = Layout.of(plan, both);
		assertThat(Days.begins(laid)).containsExactly("09:00", "09:30", "09:00");
		assertThat(laid.warnings()).isEmpty();
	}

	@Test
	void aJudgeAtTheMeetingAndACoachOnPracticeIceAreThere() {
		Programme two = Days.with(
				Days.with(
						Days.programme(Days.segment("Short", "Junior", 170, 2), Days.segment("Free", "Senior", 240, 2)),
						"Ada Birch", Set.of(Days.id("Junior"), Days.id("Senior")), Set.of()),
				"Ole Fir", Set.of(Days.id("Junior")), Set.of(Days.id("Senior 1")));
		Block meeting = new Block(Days.id("meeting"), Days.SIDE, Block.Kind.MEETING, "", 900, Block.Timing.NEXT,
				Block.Part.all(Days.id("Free")));
		Block practice = new Block(Days.id("practice"), Days.SIDE, Block.Kind.PRACTICE, "", 480, Block.Timing.NEXT,
				Block.Part.all(Days.id("Free")));
		Laid laid = Layout.of(Days.plan(Days.skated("Short"), meeting), two);
		assertThat(Days.why(laid, Warning.Kind.PERSON)).singleElement()
			.asString()
			.startsWith("Ada Birch is wanted in two places at once: ")
			.contains("Judges’ meeting, Senior, Free");
		assertThat(Days.why(Layout.of(Days.plan(Days.skated("Short"), practice), two), Warning.Kind.PERSON))
			.singleElement()
			.asString()
			.startsWith("Ole Fir is wanted in two places at once: ");
	}

	@Test
	void everyKindOfWarningHasASentence() {
		Programme none = Days.programme();
		assertThat(Warning.Kind.values()).hasSize(10);
		Laid laid = Layout.of(
				Days.plan(Days.skated("Short"), Days.anchored(Days.block("Gala", Block.Kind.PRACTICE, 700), "09:00")),
				none);
		assertThat(laid.warnings()).extracting(Warning::kind)
			.contains(Warning.Kind.GONE, Warning.Kind.CLOSING, Warning.Kind.ICE);
		assertThat(laid.warnings()).allSatisfy(
				(warning) -> assertThat(warning.why().english()).isNotBlank().doesNotContain("timetable.warning"));
	}

	@Test
	void theIceIsResurfacedBetweenTwoTeamsBeforeItIsWornTooMuch() {
		Programme seniors = Days.programme(Days.segment("Free", "Senior", 240, 20));
		Laid laid = Layout.of(Days.plan(Days.skated("Free")), seniors);
		// 450 s a team: eight are exactly an hour.
		List<Laid.Slot> slots = laid.blocks().get(0).slots();
		assertThat(slots).filteredOn((slot) -> slot.kind() == Laid.SlotKind.RESURFACING)
			.extracting((slot) -> Days.time(slot.begins()))
			.containsExactly("10:00", "11:15");
		assertThat(Days.why(laid, Warning.Kind.ICE)).isEmpty();
	}

	@Test
	void theIceIsResurfacedAtItsTimeAtTheNextChange() {
		Programme seniors = Days.programme(Days.segment("Free", "Senior", 240, 6));
		Plan plan = new Plan(List.of("Main"), List.of(Days.sheet(Days.MAIN, "09:10", "11:00")),
				List.of(Days.skated("Free"), Days.anchored(Days.block("Gala", Block.Kind.CEREMONY, 20), "12:00")),
				PlanRules.USUAL);
		Laid laid = Layout.of(plan, seniors);
		assertThat(laid.blocks().get(0).slots()).filteredOn((slot) -> slot.team() == null)
			.extracting((slot) -> Days.time(slot.begins()))
			.containsExactly("09:15");
		assertThat(laid.blocks().get(1).slots()).extracting((slot) -> Days.time(slot.begins()))
			.containsExactly("11:00");
	}

	@Test
	void aGroupThatWarmedUpIsNotInterrupted() {
		PlanRules.TeamTime together = new PlanRules.TeamTime(PlanRules.WarmUp.GROUP, 300, 60, 30, 60, 120);
		PlanRules rules = new PlanRules(together, new PlanRules.IceCare(1800, 600, true), PlanRules.USUAL.care());
		Laid laid = Layout.of(Days.plan(Days.skated("Short")).by(rules),
				Days.programme(Days.segment("Short", "Junior", 170, 6)));
		assertThat(laid.blocks().get(0).slots()).extracting(Laid.Slot::kind)
			.containsExactly(Laid.SlotKind.WARM_UP, Laid.SlotKind.TEAM, Laid.SlotKind.TEAM, Laid.SlotKind.TEAM,
					Laid.SlotKind.RESURFACING, Laid.SlotKind.WARM_UP, Laid.SlotKind.TEAM, Laid.SlotKind.TEAM,
					Laid.SlotKind.TEAM);
	}

	@Test
	void practiceTooLongForTheIceIsWarnedAbout() {
		Laid laid = Layout.of(Days.plan(Days.block("Practice", Block.Kind.PRACTICE, 90)), Days.programme());
		assertThat(Days.why(laid, Warning.Kind.ICE)).containsExactly(
				"Practice: at 10:30 people have skated for 90 minutes without resurfacing; the plan allows 60.");
	}

	@Test
	void theRinksClosingIsWarnedAbout() {
		Laid laid = Layout.of(Days.plan(Days.anchored(Days.block("Gala", Block.Kind.CEREMONY, 90), "19:00")),
				Days.programme());
		assertThat(Days.why(laid, Warning.Kind.CLOSING))
			.containsExactly("Gala ends at 20:30, after the rink closes at 20:00.");
	}

	@Test
	void aTeamCannotBeOnTwoSurfacesAndNeedsRest() {
		Programme both = Days.programme(Days.segment("Short", "Junior", 170, 2),
				Days.segment("Free", "Junior", 240, 2));
		Block aside = Days.skated("Free").at(Days.SIDE);
		Laid laid = Layout.of(Days.plan(Days.skated("Short"), aside), both);
		assertThat(Days.why(laid, Warning.Kind.TEAM)).hasSize(2)
			.first()
			.asString()
			.startsWith("Junior 1 is in two places at once: Junior, ");
		Laid after = Layout.of(Days.plan(Days.skated("Short"), Days.skated("Free")), both);
		assertThat(Days.why(after, Warning.Kind.TEAM)).isEmpty();
		assertThat(Days.why(after, Warning.Kind.REST)).containsExactly(
				"Junior 1 has 6 minutes between Junior, Short and Junior, Free; the plan asks for 60.",
				"Junior 2 has 7 minutes between Junior, Short and Junior, Free; the plan asks for 60.");
	}

	@Test
	void whoSitsOnTwoPanelsOrCoachesCannotBeInTwoPlaces() {
		Programme two = Days.with(
				Days.with(
						Days.programme(Days.segment("Short", "Junior", 170, 2), Days.segment("Free", "Senior", 240, 2)),
						"Ada Birch", Set.of(Days.id("Junior"), Days.id("Senior")), Set.of()),
				"Ole Fir", Set.of(Days.id("Junior")), Set.of(Days.id("Senior 1")));
		Laid laid = Layout.of(Days.plan(Days.skated("Short"), Days.skated("Free").at(Days.SIDE)), two);
		assertThat(Days.why(laid, Warning.Kind.PERSON)).hasSize(2)
			.anyMatch((why) -> why.startsWith("Ada Birch is wanted in two places at once"))
			.anyMatch((why) -> why.startsWith("Ole Fir is wanted in two places at once"));
		assertThat(Days.why(laid, Warning.Kind.MUSIC)).hasSize(1);
		Laid apart = Layout.of(Days.plan(Days.skated("Short"), Days.skated("Free")), two);
		assertThat(Days.why(apart, Warning.Kind.PERSON)).isEmpty();
		assertThat(Days.why(apart, Warning.Kind.MUSIC)).isEmpty();
	}

	@Test
	void twoTeamsOfAClubNeedItsRooms() {
		Programme.Team first = new Programme.Team(Days.id("a"), "Aurora", "North", 1, 1);
		Programme.Team second = new Programme.Team(Days.id("b"), "Borealis", "North", 2, 1);
		Programme close = Days.programme(new Programme.Segment(Days.id("Short"),
				new Programme.Named(Days.id("Junior"), "Junior"), "Short", 170, false, true, List.of(first, second)));
		assertThat(Days.why(Layout.of(Days.plan(Days.skated("Short")), close), Warning.Kind.CHANGING)).containsExactly(
				"North has two teams close together: Aurora, then Borealis on 13 Feb 09:06, 0 minutes later; the plan asks for 20 for its changing rooms.");
	}

	@Test
	void everyTeamIsInOneBlock() {
		assertThat(Days.why(Layout.of(Days.plan(), JUNIORS), Warning.Kind.COVERAGE))
			.containsExactly("Junior, Short is in no block of the plan.");
		Block all = Days.skated("Short");
		Laid parts = Layout.of(Days.plan(Days.part(all, 1, 2), Days.part(all, 2, 3)), JUNIORS);
		assertThat(Days.why(parts, Warning.Kind.COVERAGE)).containsExactly(
				"Junior, Short: no block of the plan has Junior 4.",
				"Junior, Short: two blocks of the plan have Junior 2.");
		assertThat(Days.why(Layout.of(Days.plan(Days.part(all, 1, 2), Days.part(all, 3, null)), JUNIORS),
				Warning.Kind.COVERAGE))
			.isEmpty();
		assertThat(Days.why(Layout.of(Days.plan(all), Days.programme()), Warning.Kind.GONE)).hasSize(1);
	}

	@Test
	void aNightOnWhichTheClockIsPutForwardLosesNoTime() {
		// Europe, 28 March 2027: 03:00 becomes 04:00 in Helsinki.
		Plan.Place night = new Plan.Place(LocalDate.of(2027, 3, 28), 0);
		Plan plan = new Plan(List.of("Main"),
				List.of(new Sheet(night, LocalTime.of(2, 30), LocalTime.of(8, 0), List.of())),
				List.of(Days.block("One", Block.Kind.BREAK, 60).at(night),
						Days.block("Two", Block.Kind.BREAK, 60).at(night)),
				PlanRules.USUAL);
		Laid laid = Layout.of(plan, Days.programme());
		assertThat(Days.begins(laid)).containsExactly("02:30", "04:30");
		Instant first = laid.blocks().get(0).begins();
		assertThat(Duration.between(first, laid.blocks().get(1).ends())).isEqualTo(Duration.ofHours(2));
	}

}
