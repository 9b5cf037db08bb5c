package rimebook.timetable.plan;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A day as it goes on. Ten juniors skate from nine o'clock, 380 seconds each; the ice is
 * resurfaced after nine of them; then there is a break until the medals at eleven.
 */
class EstimateTests {

	private static final Programme PROGRAMME = Days.programme(Days.segment("Short", "Junior", 170, 10));

	private static final Block SHORT = Days.skated("Short");

	private static final Programmed TIMETABLE = programmed(SHORT, Days.block("Lunch", Block.Kind.BREAK, 30),
			Days.anchored(Days.block("Medals", Block.Kind.CEREMONY, 20), "11:00"));

	private final List<Skated> skated = new ArrayList<>();

	@Test
	void beforeAnybodyIsCalledEverythingIsAsPublished() {
		waiting(1, 10);
		Estimate estimate = Estimate.of(TIMETABLE, this.skated, at("08:30:00"));
		assertThat(estimate.expected()).allMatch((one) -> one.minutesLate() == 0 && !one.hasBand());
		assertThat(times(estimate)).startsWith("1 09:00:00", "2 09:06:20").hasSize(10);
	}

	@Test
	void whileNobodyIsCalledTheDayIsLateByWhatHasPassed() {
		waiting(1, 10);
		assertThat(times(Estimate.of(TIMETABLE, this.skated, at("09:05:00")))).startsWith("1 09:05:00", "2 09:11:20");
	}

	@Test
	void oneTeamBehindTheOtherAsPlannedUntilThreeWereMeasured() {
		called(1, "09:04:00");
		called(2, "09:12:00");
		onIce(3, "09:20:00");
		waiting(4, 10);
		Estimate estimate = Estimate.of(TIMETABLE, this.skated, at("09:21:00"));
		assertThat(estimate.paces().get(0).measured()).isEqualTo(2);
		assertThat(times(estimate)).startsWith("4 09:26:20", "5 09:32:40");
		assertThat(team(estimate, 4).minutesLate()).isEqualTo(7);
		assertThat(team(estimate, 4).hasBand()).isFalse();
	}

	@Test
	void theBandComesFromHowLongTeamsTookToday() {
		// 400, 420, 440 and 500 seconds: 20, 40, 60 and 120 longer than planned.
		called(1, "09:00:00");
		called(2, "09:06:40");
		called(3, "09:13:40");
		called(4, "09:21:00");
		onIce(5, "09:29:20");
		waiting(6, 10);
		Estimate estimate = Estimate.of(TIMETABLE, this.skated, at("09:30:00"));
		assertThat(estimate.paces()).containsEntry(0, new Pace(4, 20, 40, 60));
		Estimate.Expected seventh = team(estimate, 7);
		assertThat(clock(seventh.at())).isEqualTo("09:43:20");
		assertThat(clock(seventh.soonest())).isEqualTo("09:42:40");
		assertThat(clock(seventh.latest())).isEqualTo("09:44:00");
		// The tenth comes after the ice was resurfaced, for a quarter of an hour.
		assertThat(clock(team(estimate, 10).at())).isEqualTo("10:19:20");
	}

	@Test
	void whatIsFarFromThePlanIsNoMeasure() {
		called(1, "09:00:00");
		called(2, "09:00:20");
		called(3, "09:06:40");
		called(4, "09:23:20");
		called(5, "09:29:40");
		onIce(6, "09:36:00");
		waiting(7, 10);
		// 20 seconds are a trial, 1,000 a pause; 380 three times are as planned.
		assertThat(Estimate.of(TIMETABLE, this.skated, at("09:37:00")).paces()).containsEntry(0, new Pace(3, 0, 0, 0));
	}

	@Test
	void aTeamThatWillNotSkateIsAGapAndTheOthersAreSaidToBeEarly() {
		called(1, "09:00:00");
		onIce(2, "09:06:20");
		this.skated.add(skated(3, null, null, Skated.State.GONE, false));
		waiting(4, 10);
		Estimate.Expected fourth = team(Estimate.of(TIMETABLE, this.skated, at("09:08:00")), 4);
		assertThat(clock(fourth.at())).isEqualTo("09:12:40");
		assertThat(fourth.minutesLate()).isEqualTo(-6);
	}

	@Test
	void aTeamThatWasPassedOverComesAfterTheOthers() {
		called(1, "09:00:00");
		onIce(3, "09:06:20");
		this.skated.add(skated(2, null, null, Skated.State.WAITING, true));
		waiting(4, 10);
		assertThat(times(Estimate.of(TIMETABLE, this.skated, at("09:07:00")))).startsWith("4 09:12:40")
			.endsWith("10 10:05:40", "2 10:12:00");
	}

	@Test
	void whatStopsATeamKeepsTheNextWaiting() {
		called(1, "09:00:00");
		onIce(2, "09:06:20");
		waiting(3, 10);
		assertThat(times(Estimate.of(TIMETABLE, this.skated, at("09:25:00")))).startsWith("3 09:25:00", "4 09:31:20");
	}

	@Test
	void nothingIsExpectedInThePastHoweverLongNobodyIsCalled() {
		called(1, "09:00:00");
		waiting(2, 10);
		Instant now = at("09:00:00");
		for (int minute = 0; minute < 240; minute++) {
			Instant then = now.plusSeconds(60L * minute);
			List<Estimate.Expected> expected = Estimate.of(TIMETABLE, this.skated, then).expected();
			assertThat(expected).allMatch((one) -> one.entry() == null || !one.latest().isBefore(then));
			assertThat(expected).filteredOn((one) -> one.entry() != null).hasSize(9);
			assertThat(expected).allMatch((one) -> one.entry() != null || !one.at().isBefore(one.published()));
		}
	}

	@Test
	void whoIsEarlierThanPublishedIsSaidToBe() {
		Random random = new Random(11);
		for (int day = 0; day < 500; day++) {
			this.skated.clear();
			int calls = 1 + random.nextInt(9);
			Instant time = at("08:50:00").plusSeconds(random.nextInt(1800));
			for (int number = 1; number <= calls; number++) {
				this.skated.add(skated(number, time, time.plusSeconds(200), Skated.State.OVER, false));
				time = time.plusSeconds(100 + random.nextInt(700));
			}
			waiting(calls + 1, 10);
			Instant now = time;
			assertThat(Estimate.of(TIMETABLE, this.skated, now).expected()).allSatisfy((one) -> {
				boolean promisedLater = one.published().getEpochSecond() - one.at().getEpochSecond() > 30;
				assertThat(one.minutesLate() < 0).isEqualTo(promisedLater);
				assertThat(one.entry() != null || !promisedLater).as("only within a segment").isTrue();
				assertThat(one.soonest()).isBeforeOrEqualTo(one.at());
				assertThat(one.latest()).isAfterOrEqualTo(one.at());
			});
		}
	}

	@Test
	void whatWasMeasuredIsToldByTheWayOfJudging() {
		called(1, "09:00:00");
		called(2, "09:06:40");
		called(3, "09:13:40");
		called(4, "09:21:00");
		assertThat(Pace.onDay(TIMETABLE, this.skated, at("09:30:00"), Set.of(Days.id("Short"))))
			.isEqualTo(new Pace(3, 20, 40, 60));
		assertThat(Pace.onDay(TIMETABLE, this.skated, at("09:30:00"), Set.of()).isMeasured()).isFalse();
		assertThat(Pace.onDay(TIMETABLE, this.skated, at("09:30:00").plusSeconds(86400 * 3), Set.of(Days.id("Short")))
			.isMeasured()).isFalse();
	}

	@Test
	void aProgrammeThatIsSkatedAgainIsNoMeasure() {
		called(1, "09:13:40");
		this.skated.add(new Skated(Days.id("Short"), entry(2), 2, at("09:20:00"), at("09:26:00"), Skated.State.OVER,
				false, true));
		called(3, "09:40:00");
		onIce(4, "09:46:20");
		waiting(5, 10);
		// From 1 to 2, and from 3 to 4; from 2 to 3 nothing is learnt.
		assertThat(Estimate.of(TIMETABLE, this.skated, at("09:47:00")).paces().get(0).measured()).isEqualTo(2);
	}

	@Test
	void whatFollowsBeginsWhenTheSegmentIsOverAndNeverTooEarly() {
		IntStream.rangeClosed(1, 9).forEach((number) -> called(number, "09:0%d:00".formatted(number)));
		this.skated.add(skated(10, at("09:20:00"), at("09:25:00"), Skated.State.OVER, false));
		Estimate early = Estimate.of(TIMETABLE, this.skated, at("09:30:00"));
		assertThat(early.of(Days.id("Medals")).orElseThrow().minutesLate()).isZero();
		this.skated.set(9, skated(10, at("10:50:00"), at("10:56:00"), Skated.State.OVER, false));
		Estimate late = Estimate.of(TIMETABLE, this.skated, at("10:57:00"));
		assertThat(clock(late.of(Days.id("Medals")).orElseThrow().at())).isEqualTo("11:26:00");
	}

	@Test
	void whatWasCalledOnAnotherDayMovesNothing() {
		this.skated.add(skated(1, at("09:00:00").minusSeconds(86400 * 90), null, Skated.State.ON_ICE, false));
		waiting(2, 10);
		assertThat(times(Estimate.of(TIMETABLE, this.skated, at("08:00:00")))).startsWith("2 09:00:00", "3 09:06:20");
		assertThat(Estimate.of(TIMETABLE, this.skated, at("08:00:00").minusSeconds(86400 * 90)).expected()).isEmpty();
	}

	@Test
	void differencesAreToldBlockByBlock() {
		Block lunch = Days.block("Lunch", Block.Kind.BREAK, 30);
		Programmed before = programmed(Days.block("Doors", Block.Kind.DOORS, 30), SHORT, lunch);
		Programmed after = programmed(SHORT, lunch.at(Days.SIDE), Days.block("Gala", Block.Kind.CEREMONY, 10));
		assertThat(Differences.between(before, after))
			.extracting(Differences.Difference::what, (one) -> one.item().title())
			.containsExactly(org.assertj.core.groups.Tuple.tuple(Differences.What.TIME, ""),
					org.assertj.core.groups.Tuple.tuple(Differences.What.ADDED, "Gala"),
					org.assertj.core.groups.Tuple.tuple(Differences.What.SURFACE, "Lunch"),
					org.assertj.core.groups.Tuple.tuple(Differences.What.REMOVED, "Doors"));
		assertThat(Differences.between(after, after)).isEmpty();
	}

	@Test
	void anotherOrderOfTheSameTeamsIsADifference() {
		List<Programme.Team> teams = new ArrayList<>(PROGRAMME.segments().get(0).teams());
		java.util.Collections.swap(teams, 0, 1);
		Programme.Segment segment = PROGRAMME.segments().get(0);
		Programme drawn = Days.programme(new Programme.Segment(segment.id(), segment.event(), segment.name(),
				segment.seconds(), segment.points(), true, teams));
		Plan plan = Days.plan(SHORT);
		Programmed before = Programmed.of(plan, Layout.of(plan, PROGRAMME), PROGRAMME);
		Programmed after = Programmed.of(plan, Layout.of(plan, drawn), drawn);
		assertThat(Differences.between(before, after)).extracting(Differences.Difference::what)
			.containsExactly(Differences.What.TEAMS);
	}

	private static Programmed programmed(Block... blocks) {
		Plan plan = Days.plan(blocks);
		return Programmed.of(plan, Layout.of(plan, PROGRAMME), PROGRAMME);
	}

	private void waiting(int from, int to) {
		IntStream.rangeClosed(from, to)
			.forEach((number) -> this.skated.add(skated(number, null, null, Skated.State.WAITING, false)));
	}

	private void called(int number, String time) {
		this.skated.add(skated(number, at(time), at(time).plusSeconds(300), Skated.State.OVER, false));
	}

	private void onIce(int number, String time) {
		this.skated.add(skated(number, at(time), null, Skated.State.ON_ICE, false));
	}

	private static Skated skated(int number, @Nullable Instant called, @Nullable Instant over, Skated.State state,
			boolean later) {
		return new Skated(Days.id("Short"), entry(number), number, called, over, state, later, false);
	}

	private static UUID entry(int number) {
		return Days.id("Junior " + number);
	}

	private static Estimate.Expected team(Estimate estimate, int number) {
		return estimate.of(SHORT.id(), entry(number)).orElseThrow();
	}

	private static List<String> times(Estimate estimate) {
		return estimate.expected()
			.stream()
			.filter((one) -> one.entry() != null)
			.map((one) -> IntStream.rangeClosed(1, 10)
				.filter((number) -> entry(number).equals(one.entry()))
				.findFirst()
				.getAsInt() + " " + clock(one.at()))
			.toList();
	}

	private static Instant at(String time) {
		return Days.DAY.atTime(LocalTime.parse(time)).atZone(Days.ZONE).toInstant();
	}

	private static String clock(Instant instant) {
		LocalTime time = instant.atZone(Days.ZONE).toLocalTime();
		return "%02d:%02d:%02d".formatted(time.getHour(), time.getMinute(), time.getSecond());
	}

}
