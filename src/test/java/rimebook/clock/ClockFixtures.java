package rimebook.clock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.shared.Ids;

/**
 * Clocks that were touched some time ago, so that no test has to wait for a programme.
 */
public final class ClockFixtures {

	private final ApplicationContext context;

	private final PerformanceId performance;

	private ClockFixtures(ApplicationContext context, PerformanceId performance) {
		this.context = context;
		this.performance = performance;
	}

	/** The clock of a performance on the ice. */
	public static ClockFixtures of(ApplicationContext context, PerformanceView performance) {
		return new ClockFixtures(context, performance.id());
	}

	/** Touch it as if that many seconds had passed since then. */
	public ClockFixtures touched(ClockView.ClockAct act, int secondsAgo) {
		return touched(act, null, secondsAgo);
	}

	/** Interrupt it as if that many seconds had passed since then. */
	public ClockFixtures interrupted(InterruptionCause cause, int secondsAgo) {
		return touched(ClockView.ClockAct.INTERRUPT, cause, secondsAgo);
	}

	private ClockFixtures touched(ClockView.ClockAct act, @Nullable InterruptionCause cause, int secondsAgo) {
		int touches = this.context.getBean(PerformanceClock.class).ofPerformance(this.performance).touches();
		Instant then = this.context.getBean(Clock.class)
			.instant()
			.minus(Duration.ofSeconds(secondsAgo))
			.truncatedTo(ChronoUnit.MILLIS);
		ClockView.Tap tap = new ClockView.Tap(touches + 1, act, cause, null, "",
				new ClockView.Tap.Noted("Runa Hale", then));
		new TransactionTemplate(this.context.getBean(PlatformTransactionManager.class))
			.executeWithoutResult((status) -> this.context.getBean(ClockTapRepository.class)
				.save(new ClockTap(this.context.getBean(Ids.class).next(), this.performance, tap)));
		return this;
	}

}
