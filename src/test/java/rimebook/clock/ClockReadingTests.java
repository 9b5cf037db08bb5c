package rimebook.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.performances.Reskates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

/** The clock's arithmetic; seconds are counted from the call. */
class ClockReadingTests {

	private static final Instant CALLED = Instant.parse("2027-02-13T13:00:00Z");

	private static final ClockView.ProgrammeWindow FOUR_MINUTES = new ClockView.ProgrammeWindow(240, 10, 10);

	private final List<ClockView.Tap> taps = new ArrayList<>();

	@Test
	void beforeTheFirstMovementNothingIsSkated() {
		ClockView clock = clock();
		assertThat(clock.state()).isEqualTo(ClockView.ClockState.WAITING);
		assertThat(clock.skated(at(59))).isZero();
		assertThat(clock.last()).isNull();
		assertThat(clock.findings()).isEmpty();
	}

	@Test
	void timeRunsFromTheFirstMovementToTheCompleteStop() {
		tap(ClockView.ClockAct.START, 40);
		assertThat(clock().skated(at(100))).hasSeconds(60);
		assertThat(clock().countsFrom()).isEqualTo(at(40));
		tap(ClockView.ClockAct.STOP, 280);
		assertThat(clock().state()).isEqualTo(ClockView.ClockState.STOPPED);
		assertThat(clock().skated(at(999))).hasSeconds(240);
	}

	@Test
	void interruptionsAreNoTimeOfTheProgramme() {
		tap(ClockView.ClockAct.START, 10);
		interrupt(InterruptionCause.INJURY, 70);
		assertThat(clock().skated(at(100))).hasSeconds(60);
		assertThat(clock().pause().length(at(100))).hasSeconds(30);
		tap(ClockView.ClockAct.RESUME, 112);
		assertThat(clock().pause()).isNull();
		assertThat(clock().countsFrom()).isEqualTo(at(52));
		assertThat(clock().skated(at(113))).hasSeconds(61);
		interrupt(InterruptionCause.MUSIC, 132);
		tap(ClockView.ClockAct.RESUME, 232);
		tap(ClockView.ClockAct.STOP, 400);
		assertThat(clock().skated(at(0))).hasSeconds(390 - 42 - 100);
	}

	@Test
	void whatWasASlipIsAsIfItHadNotBeen() {
		tap(ClockView.ClockAct.START, 10);
		tap(ClockView.ClockAct.STOP, 20);
		tap(ClockView.ClockAct.TAKE_BACK, 25);
		assertThat(clock().state()).isEqualTo(ClockView.ClockState.RUNNING);
		assertThat(clock().skated(at(30))).hasSeconds(20);
		interrupt(InterruptionCause.RINK, 31);
		tap(ClockView.ClockAct.TAKE_BACK, 40);
		assertThat(clock().times().interruptions()).isEmpty();
		assertThat(clock().skated(at(50))).hasSeconds(40);
		tap(ClockView.ClockAct.TAKE_BACK, 55);
		assertThat(clock().state()).isEqualTo(ClockView.ClockState.WAITING);
		assertThat(clock().last()).isNull();
		assertThat(clock().touches()).isEqualTo(6);
		assertThat(clock().log()).hasSize(6);
	}

	@Test
	void goingOnThatIsTakenBackLetsTheInterruptionGoOnFromItsBeginning() {
		tap(ClockView.ClockAct.START, 0);
		interrupt(InterruptionCause.EQUIPMENT, 60);
		tap(ClockView.ClockAct.RESUME, 80);
		tap(ClockView.ClockAct.TAKE_BACK, 85);
		assertThat(clock().state()).isEqualTo(ClockView.ClockState.INTERRUPTED);
		assertThat(clock().pause().length(at(90))).hasSeconds(30);
		assertThat(clock().skated(at(90))).hasSeconds(60);
	}

	@Test
	void anotherCauseLeavesTheTimeOfTheInterruptionAsItIs() {
		tap(ClockView.ClockAct.START, 0);
		interrupt(InterruptionCause.RINK, 60);
		interrupt(InterruptionCause.INJURY, 75);
		assertThat(clock().times().interruptions()).hasSize(1);
		assertThat(clock().pause().cause()).isEqualTo(InterruptionCause.INJURY);
		assertThat(clock().pause().length(at(90))).hasSeconds(30);
		tap(ClockView.ClockAct.TAKE_BACK, 91);
		assertThat(clock().pause().cause()).isEqualTo(InterruptionCause.RINK);
		assertThat(clock().pause().length(at(100))).hasSeconds(40);
	}

	@Test
	void reskateStartsTheTimeAnewAndSaysWhatIsMarked() {
		tap(ClockView.ClockAct.START, 70);
		interrupt(InterruptionCause.RINK, 130);
		reskate(Reskates.Marking.RESKATED_ONLY, 700);
		assertThat(clock().state()).isEqualTo(ClockView.ClockState.WAITING);
		assertThat(clock().attempt().run()).isEqualTo(2);
		assertThat(clock().attempt().marking()).isEqualTo(Reskates.Marking.RESKATED_ONLY);
		assertThat(clock().skated(at(710))).isZero();
		assertThat(clock().findings()).as("neither the late start nor the interruption of the first run").isEmpty();
		tap(ClockView.ClockAct.START, 800);
		tap(ClockView.ClockAct.STOP, 1040);
		assertThat(clock().skated(at(0))).hasSeconds(240);
		tap(ClockView.ClockAct.TAKE_BACK, 1041);
		tap(ClockView.ClockAct.TAKE_BACK, 1042);
		tap(ClockView.ClockAct.TAKE_BACK, 1043);
		assertThat(clock().state()).isEqualTo(ClockView.ClockState.INTERRUPTED);
		assertThat(clock().attempt().run()).isEqualTo(1);
		assertThat(clock().skated(at(2000))).hasSeconds(60);
	}

	@ParameterizedTest(name = "{0} ms skated: {1} s short, {2} s long")
	@CsvSource({ "229999, 1, 0", "230000, 0, 0", "240000, 0, 0", "250000, 0, 0", "250999, 0, 0", "251000, 0, 1",
			"262500, 0, 12", "0, 230, 0" })
	void wholeSecondsOutsideTheWindowAreFound(int millis, int lacking, int over) {
		tap(ClockView.ClockAct.START, 0);
		tap(ClockView.ClockAct.STOP, CALLED.plusMillis(millis));
		List<ClockView.ClockFinding> findings = clock().findings();
		if (lacking + over == 0) {
			assertThat(findings).isEmpty();
		}
		else {
			assertThat(findings).extracting(ClockView.ClockFinding::fault, ClockView.ClockFinding::seconds)
				.containsExactly((over > 0) ? tuple(ClockView.ClockFinding.Fault.TOO_LONG, over)
						: tuple(ClockView.ClockFinding.Fault.TOO_SHORT, lacking));
		}
	}

	@Test
	void withALongestAloneNoProgrammeIsTooShort() {
		ClockView.ProgrammeWindow longest = new ClockView.ProgrammeWindow(170, 0, null);
		assertThat(longest.lacking(1)).isZero();
		assertThat(longest.over(173)).isEqualTo(3);
		ClockView.ProgrammeWindow apart = new ClockView.ProgrammeWindow(240, 10, 30);
		assertThat(apart.lacking(209)).isOne();
		assertThat(apart.over(252)).isEqualTo(2);
	}

	@Test
	void startLaterThanAMinuteAfterTheCallIsLate() {
		tap(ClockView.ClockAct.START, CALLED.plusMillis(60_999));
		assertThat(clock().findings()).isEmpty();
		this.taps.clear();
		tap(ClockView.ClockAct.START, 61);
		assertThat(clock().findings()).extracting(ClockView.ClockFinding::fault, ClockView.ClockFinding::seconds)
			.containsExactly(tuple(ClockView.ClockFinding.Fault.LATE_START, 61));
	}

	@Test
	void onlyALongerInterruptionByTheTeamsOwnCauseIsFound() {
		tap(ClockView.ClockAct.START, 0);
		interrupt(InterruptionCause.MUSIC, 10);
		tap(ClockView.ClockAct.RESUME, 100);
		interrupt(InterruptionCause.INJURY, 110);
		tap(ClockView.ClockAct.RESUME, 120);
		assertThat(clock().findings()).isEmpty();
		assertThat(clock().hasContinued()).isTrue();
		interrupt(InterruptionCause.EQUIPMENT, 130);
		tap(ClockView.ClockAct.RESUME, 141);
		assertThat(clock().findings())
			.extracting(ClockView.ClockFinding::fault, ClockView.ClockFinding::seconds, ClockView.ClockFinding::since)
			.containsExactly(tuple(ClockView.ClockFinding.Fault.INTERRUPTION, 11, at(141)));
	}

	@ParameterizedTest
	@CsvSource({ "1, 10, 1", "10, 10, 1", "11, 10, 2", "20, 10, 2", "5, 5, 1", "6, 5, 2" })
	void aStepThatHasBegunCountsWhole(int seconds, int step, int steps) {
		assertThat(new ClockView.ClockFinding(ClockView.ClockFinding.Fault.TOO_LONG, seconds, CALLED).steps(step))
			.isEqualTo(steps);
	}

	@ParameterizedTest
	@CsvSource({ "WAITING, START", "RUNNING, STOP INTERRUPT", "INTERRUPTED, INTERRUPT RESUME RESKATE",
			"STOPPED, RESKATE" })
	void onlyWhatFitsTheStateIsPossible(ClockView.ClockState state, String possible) {
		for (ClockView.ClockAct act : ClockView.ClockAct.values()) {
			assertThat(state.allows(act)).as(act.name())
				.isEqualTo(act == ClockView.ClockAct.TAKE_BACK || List.of(possible.split(" ")).contains(act.name()));
		}
	}

	private ClockView clock() {
		return ClockReading.of(this.taps, CALLED, 1, FOUR_MINUTES);
	}

	private static Instant at(int seconds) {
		return CALLED.plus(Duration.ofSeconds(seconds));
	}

	private void interrupt(InterruptionCause cause, int seconds) {
		add(ClockView.ClockAct.INTERRUPT, cause, null, at(seconds));
	}

	private void reskate(Reskates.Marking marking, int seconds) {
		add(ClockView.ClockAct.RESKATE, null, marking, at(seconds));
	}

	private void tap(ClockView.ClockAct act, int seconds) {
		tap(act, at(seconds));
	}

	private void tap(ClockView.ClockAct act, Instant at) {
		add(act, null, null, at);
	}

	private void add(ClockView.ClockAct act, @Nullable InterruptionCause cause, Reskates.@Nullable Marking marking,
			Instant at) {
		this.taps.add(new ClockView.Tap(this.taps.size() + 1, act, cause, marking, "",
				new ClockView.Tap.Noted("Runa Hale", at)));
	}

}
