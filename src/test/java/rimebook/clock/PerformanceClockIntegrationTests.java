package rimebook.clock;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

import rimebook.audit.RecordVerification;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reskates;
import rimebook.performances.SegmentRun;
import rimebook.remarks.Remarks;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

@WholeApplication
class PerformanceClockIntegrationTests {

	private static final Actor REFEREE = SmallCompetition.REFEREE;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PerformanceClock clock;

	@Autowired
	private SegmentRun run;

	@Autowired
	private RecordVerification record;

	@Autowired
	private JdbcTemplate database;

	private SmallCompetition day;

	private PerformanceView onIce;

	@BeforeEach
	void teamIsCalled() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.day.open(1);
		this.onIce = this.day.callNext(1);
	}

	@Test
	void everyTouchIsKeptWithItsTimeAndStandsOnTheRecord() {
		this.clock.start(id(), 0, REFEREE);
		this.clock.interrupt(id(), 1, InterruptionCause.INJURY, REFEREE);
		this.clock.resume(id(), 2, "the second block", REFEREE);
		this.clock.stop(id(), 3, REFEREE);
		ClockView clock = this.clock.ofPerformance(id());
		assertThat(clock.state()).isEqualTo(ClockView.ClockState.STOPPED);
		assertThat(clock.log()).extracting(ClockView.Tap::act)
			.containsExactly(ClockView.ClockAct.START, ClockView.ClockAct.INTERRUPT, ClockView.ClockAct.RESUME,
					ClockView.ClockAct.STOP);
		assertThat(clock.log()).extracting((tap) -> tap.noted().notedBy()).containsOnly(REFEREE.name());
		assertThat(clock.log())
			.isSortedAccordingTo((one, other) -> one.noted().notedAt().compareTo(other.noted().notedAt()));
		assertThat(recorded()).containsSubsequence("clock.start", "clock.interrupt", "clock.resume", "clock.stop");
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	@Test
	void panelIsToldByItselfWhenTheProgrammeIsBrokenOffOrGoesOn() {
		this.clock.start(id(), 0, REFEREE);
		this.clock.interrupt(id(), 1, InterruptionCause.EQUIPMENT, REFEREE);
		this.clock.resume(id(), 2, "the second block", REFEREE);
		this.clock.interrupt(id(), 3, InterruptionCause.RINK, REFEREE);
		this.clock.takeBack(id(), 4, REFEREE);
		this.clock.interrupt(id(), 5, InterruptionCause.MUSIC, REFEREE);
		this.clock.interrupt(id(), 6, InterruptionCause.RINK, REFEREE);
		this.clock.takeBack(id(), 7, REFEREE);
		this.clock.reskate(id(), 8, Reskates.Marking.RESKATED_ONLY, REFEREE);
		List<Remarks.RemarkView> told = this.context.getBean(Remarks.class).ofPerformance(id());
		assertThat(told).extracting(Remarks.RemarkView::kind).containsOnly(Remarks.RemarkKind.ICE);
		assertThat(told).extracting(Remarks.RemarkView::text)
			.containsExactly("Interrupted: equipment", "Resumed at the point of the second block, after 0:00",
					"Interrupted: light, ice or outside", "Taken back: interrupted", "Interrupted: music",
					"Interrupted: light, ice or outside", "Taken back: interrupted; the team is interrupted: music",
					"Re-skate from the beginning: mark only the re-skated programme");
	}

	@Test
	void whoeverActsOnAnOlderLookIsTold() {
		this.clock.start(id(), 0, REFEREE);
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> this.clock.start(id(), 0, REFEREE))
			.withMessageContaining("it is running now")
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("stale-version"));
		assertThat(this.clock.ofPerformance(id()).touches()).isOne();
	}

	@Test
	void whatDoesNotFitTheStateIsRefused() {
		assertThatThrownBy(() -> this.clock.stop(id(), 0, REFEREE))
			.hasMessageContaining("is waiting for the start; from there it cannot be stopped");
		assertThatThrownBy(() -> this.clock.takeBack(id(), 0, REFEREE)).hasMessageContaining("nothing to take back");
		this.clock.start(id(), 0, REFEREE);
		assertThatThrownBy(() -> this.clock.resume(id(), 1, "", REFEREE)).isInstanceOf(ConflictException.class);
		this.clock.interrupt(id(), 1, InterruptionCause.RINK, REFEREE);
		assertThatThrownBy(() -> this.clock.reskate(id(), 2, null, REFEREE)).isInstanceOf(RuleViolationException.class)
			.hasMessageContaining("what the judges mark");
		assertThatThrownBy(() -> this.clock.resume(id(), 2, "x".repeat(201), REFEREE))
			.isInstanceOf(RuleViolationException.class);
	}

	@Test
	void onlyTheTeamOnTheIceHasAClock() {
		PerformanceId waiting = this.day.performances(1).get(1).id();
		assertThatThrownBy(() -> this.clock.start(waiting, 0, REFEREE)).hasMessageContaining("it is waiting");
	}

	@Test
	void cardsAreNotClosedWhileTheClockRuns() {
		this.clock.start(id(), 0, REFEREE);
		this.day.sendAll(this.onIce);
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> this.day.close(this.onIce))
			.satisfies((ex) -> assertThat(ex.code()).isEqualTo("clock-running"));
		this.clock.stop(id(), 1, REFEREE);
		this.day.close(this.onIce);
		assertThatThrownBy(() -> this.clock.takeBack(id(), 2, REFEREE)).hasMessageContaining("it is closed");
	}

	@Test
	void callIsTakenBackOnlyAfterTheStart() {
		this.clock.start(id(), 0, REFEREE);
		int version = this.day.now(this.onIce).version();
		assertThatThrownBy(() -> this.run.takeBack(id(), version, REFEREE)).hasMessageContaining("was started");
		this.clock.takeBack(id(), 1, REFEREE);
		this.run.takeBack(id(), version, REFEREE);
		assertThat(this.day.now(this.onIce).status()).isEqualTo(PerformanceStatus.WAITING);
	}

	@Test
	void touchesAreNeverChanged() {
		this.clock.start(id(), 0, REFEREE);
		assertThatThrownBy(() -> this.database.update("update clock_tap set noted_at = current_timestamp"))
			.hasMessageContaining("keeps what was written");
		assertThatThrownBy(() -> this.database.update("delete from clock_tap"))
			.hasMessageContaining("keeps what was written");
		assertThatThrownBy(() -> this.database.execute("truncate table clock_tap")).isNotNull();
		assertThat(this.clock.ofPerformance(id()).touches()).isOne();
	}

	private PerformanceId id() {
		return this.onIce.id();
	}

	private List<String> recorded() {
		return this.database.queryForList("select action from record_line where subject_id = ? order by number",
				String.class, id().toString());
	}

}
