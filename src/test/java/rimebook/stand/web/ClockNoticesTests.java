package rimebook.stand.web;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;

import rimebook.clock.ClockView;
import rimebook.clock.InterruptionCause;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.remarks.RemarkReceipts;
import rimebook.remarks.Remarks;
import rimebook.stand.StandView;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A programme of 4:00, ten seconds more or less, that starts 30 seconds after the call.
 */
class ClockNoticesTests {

	private static final Instant CALLED = Instant.parse("2027-02-13T13:00:00Z");

	private static final Instant STARTED = CALLED.plusSeconds(30);

	private final ClockNotices notices = new ClockNotices(messages());

	/** US Figure Skating, rules about programme timing, 2006 and 2012. */
	@ParameterizedTest
	@CsvSource({ "251, 1 s too long: deduct 0.1 from both marks", "260, 10 s too long: deduct 0.1 from both marks",
			"261, 11 s too long: deduct 0.2 from both marks", "229, 1 s too short: deduct 0.1 from both marks",
			"219, 11 s too short: deduct 0.2 from both marks", "840, 590 s too long: deduct 5.9 from both marks" })
	void eachTenSecondsOrPartOfThemCostATenthOfBothMarks(int skated, String text) {
		assertThat(notices(skated)).singleElement().satisfies((notice) -> {
			assertThat(notice.text()).isEqualTo(text);
			assertThat(notice.fromMemory()).as("a published amount").isFalse();
			assertThat(notice.isDeduction()).isFalse();
		});
	}

	/** US Figure Skating, "The 6.0 System": a mark is 0 to 6.0. */
	@ParameterizedTest
	@CsvSource({ "850, 600", "851, 601", "21850, 21600" })
	void clockThatWasForgottenTakesNoMoreThanAMarkHas(int skated, int over) {
		assertThat(notices(skated)).singleElement().satisfies((notice) -> {
			assertThat(notice.text()).isEqualTo(over + " s too long: deduct 6.0 from both marks");
			assertThat(notice.finding().isDoubtful()).isTrue();
		});
	}

	@ParameterizedTest
	@CsvSource({ "230", "240", "250" })
	void whatIsInsideTheTimeProposesNothing(int skated) {
		assertThat(notices(skated)).isEmpty();
	}

	@Test
	void lateStartIsToldWithoutAnAmount() {
		ClockView late = clock(CALLED.plusSeconds(75), 240, List.of());
		assertThat(this.notices.of(now(late, List.of()))).extracting(ClockProposal::text)
			.containsExactly("late start, 75 s after the call");
	}

	@Test
	void interruptionIsTheRefereesAlone() {
		ClockView broken = clock(STARTED, 300, List.of(new ClockView.Interruption(InterruptionCause.INJURY,
				STARTED.plusSeconds(60), STARTED.plusSeconds(120))));
		assertThat(this.notices.of(now(broken, List.of()))).isEmpty();
	}

	@Test
	void whatWasToldIsNotProposedAgainUnlessTheClockFindsItAnew() {
		ClockView clock = clock(STARTED, 261, List.of());
		Instant stopped = STARTED.plusSeconds(261);
		assertThat(this.notices.of(now(clock, List.of(told("as agreed", stopped))))).isEmpty();
		assertThat(this.notices.of(now(clock, List.of(told("as agreed", stopped.minusSeconds(5)))))).hasSize(1);
	}

	private List<ClockProposal> notices(int skated) {
		return this.notices.of(now(clock(STARTED, skated, List.of()), List.of()));
	}

	private static ClockView clock(Instant started, int running, List<ClockView.Interruption> interruptions) {
		return new ClockView(ClockView.ClockState.STOPPED, new ClockView.Attempt(1, 1, null),
				new ClockView.Times(CALLED, started, started.plusSeconds(running), interruptions),
				ClockView.ClockAct.STOP, new ClockView.ProgrammeWindow(240, 10, 10), List.of());
	}

	private static RemarkReceipts.ToPanel told(String text, Instant touch) {
		return new RemarkReceipts.ToPanel(new Remarks.RemarkView(new UUID(1, 3), Remarks.RemarkKind.TIME, text,
				"Runa Hale", CALLED.plusSeconds(900), touch), List.of(), 3);
	}

	private static StandView.Now now(ClockView clock, List<RemarkReceipts.ToPanel> told) {
		PerformanceView performance = new PerformanceView(new PerformanceId(new UUID(1, 1)),
				new SegmentId(new UUID(1, 2)), new PerformanceView.Start(new EntryId(new UUID(1, 4)), 1, 1),
				new PerformanceView.Course(PerformanceStatus.ON_ICE, "", 1, null),
				new PerformanceView.Turn(CALLED, "", false), 1);
		return new StandView.Now(new StandView.Row(performance, "Amber Drift", "Amber Drift", "Fjord Skating Club"),
				new StandView.Now.Cards(List.of(), List.of(), List.of(), true), told, clock);
	}

	private static ResourceBundleMessageSource messages() {
		ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
		messages.setBasename("messages/stand");
		messages.setDefaultEncoding("UTF-8");
		return messages;
	}

}
