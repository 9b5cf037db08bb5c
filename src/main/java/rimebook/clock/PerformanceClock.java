package rimebook.clock;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.performances.PanelNotices;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reskates;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * The referee's clock of the performance on the ice. Each touch is a row that is never
 * changed, with the time at which the service received it. Whoever acts gives back how
 * many touches were seen, so of two who act at once one has done it and the other is
 * told. When the programme is broken off or goes on, the panel is told by itself.
 */
@Service
public class PerformanceClock {

	private static final int LONGEST_POINT = 200;

	private final PerformanceRegister performances;

	private final ClockBook book;

	private final PanelNotices notices;

	private final Reskates reskates;

	private final ClockConsequences consequences;

	private final Acts acts;

	PerformanceClock(PerformanceRegister performances, ClockBook book, PanelNotices notices, Reskates reskates,
			ClockConsequences consequences, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.book = book;
		this.notices = notices;
		this.reskates = reskates;
		this.consequences = consequences;
	}

	/**
	 * Start: a skater has moved.
	 * @param seen how many touches the referee was looking at
	 * @throws rimebook.shared.ConflictException if somebody else touched the clock
	 * meanwhile, it runs already, or the team is not on the ice; the same for every act
	 */
	@Transactional
	public void start(PerformanceId id, int seen, Actor actor) {
		touch(id, seen, new Touch(ClockView.ClockAct.START, null, null, ""), actor);
	}

	/** Stop: the team has come to its complete stop. */
	@Transactional
	public void stop(PerformanceId id, int seen, Actor actor) {
		touch(id, seen, new Touch(ClockView.ClockAct.STOP, null, null, ""), actor);
	}

	/**
	 * Break the programme off at the referee's signal, and tell the panel. Of one that is
	 * broken off already only the cause becomes another; its time goes on.
	 */
	@Transactional
	public void interrupt(PerformanceId id, int seen, InterruptionCause cause, Actor actor) {
		touch(id, seen, new Touch(ClockView.ClockAct.INTERRUPT, cause, null, ""), actor);
	}

	/**
	 * Go on from the point of interruption, and tell the panel.
	 * @param point which point that is, up to 200 characters; may be empty
	 */
	@Transactional
	public void resume(PerformanceId id, int seen, String point, Actor actor) {
		String words = Required.optional("point", point, LONGEST_POINT);
		touch(id, seen, new Touch(ClockView.ClockAct.RESUME, null, null, words), actor);
	}

	/**
	 * Let the programme be skated again from its beginning, and tell the panel. Where
	 * only the re-skate counts, what was sent and noted is set aside and the re-skate is
	 * a performance of its own, whose clock has not been touched.
	 * @param marking what the judges mark then; the rulebook in force says
	 * @throws rimebook.shared.RuleViolationException if that was not chosen, or
	 * {@code nothing-interrupted} if what came before the interruption is to count of a
	 * programme that was skated to its end
	 */
	@Transactional
	public void reskate(PerformanceId id, int seen, Reskates.@Nullable Marking marking, Actor actor) {
		if (marking == null) {
			throw ClockRefusals.markingMissing();
		}
		PerformanceView performance = touch(id, seen, new Touch(ClockView.ClockAct.RESKATE, null, marking, ""), actor);
		if (marking == Reskates.Marking.RESKATED_ONLY) {
			this.reskates.begin(performance.id(), actor);
		}
	}

	/**
	 * Take back the newest act that counts, upon which nothing was done; the clock is as
	 * if it had not been.
	 */
	@Transactional
	public void takeBack(PerformanceId id, int seen, Actor actor) {
		takeBack(id, seen, 0, actor);
	}

	/**
	 * Take back the newest act that counts, and with it what was deducted or told to the
	 * panel because of what the clock found by it.
	 * @param along how many of these the referee was asked about
	 * @throws rimebook.shared.ConflictException {@code clock-takes-along}, naming them,
	 * if there are more or fewer
	 */
	@Transactional
	public void takeBack(PerformanceId id, int seen, int along, Actor actor) {
		Set<Instant> found = this.book.of(this.performances.hold(id)).foundByLast();
		PerformanceView performance = touch(id, seen, new Touch(ClockView.ClockAct.TAKE_BACK, null, null, ""), actor);
		this.consequences.takeBack(performance, found, along, actor);
	}

	/** Name what would be taken back together with the newest act that counts. */
	@Transactional(readOnly = true)
	public List<Sentence> takenAlong(PerformanceId id) {
		PerformanceView performance = this.performances.find(id);
		return this.consequences.words(performance, this.book.of(performance).foundByLast());
	}

	/** Return the clock of a performance. */
	@Transactional(readOnly = true)
	public ClockView ofPerformance(PerformanceId id) {
		return this.book.of(this.performances.find(id));
	}

	private PerformanceView touch(PerformanceId id, int seen, Touch touch, Actor actor) {
		Instant received = this.acts.now().truncatedTo(ChronoUnit.MILLIS);
		PerformanceView performance = this.performances.holdOpen(id);
		ClockView before = this.book.of(performance);
		requirePossible(performance, before, seen, touch);
		ClockView.Tap tap = touch.at(before, received, actor);
		this.book.add(new ClockTap(this.acts.nextId(), id, tap));
		ClockView after = after(before, tap);
		ClockWords.notice(tap, before, after).ifPresent((words) -> this.notices.tell(id, words, actor));
		this.book.tell(new ClockTouched(id, performance.segment(), before.state(), after.state(),
				AuditedChange.of(actor, "performance", id, action(tap))
					.from(ClockWords.state(before, tap), ClockWords.state(after, tap))
					.because(reason(tap))));
		return performance;
	}

	private static String action(ClockView.Tap tap) {
		return "clock." + tap.act().name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static void requirePossible(PerformanceView performance, ClockView clock, int seen, Touch touch) {
		ClockView.ClockAct act = touch.act();
		if (!performance.isOnIce()) {
			throw ClockRefusals.notOnIce(performance);
		}
		if (clock.touches() != seen) {
			throw ClockRefusals.touchedMeanwhile(performance, clock);
		}
		if (!clock.state().allows(act)) {
			throw ClockRefusals.notFromHere(performance, clock, act);
		}
		if (touch.marking() == Reskates.Marking.AS_FIRST_SKATED && clock.state() == ClockView.ClockState.STOPPED) {
			throw ClockRefusals.nothingInterrupted();
		}
		if (act == ClockView.ClockAct.TAKE_BACK && clock.last() == null) {
			throw ClockRefusals.nothingToTakeBack(performance);
		}
	}

	private static ClockView after(ClockView before, ClockView.Tap tap) {
		List<ClockView.Tap> touches = new ArrayList<>(before.log());
		touches.add(tap);
		return ClockReading.of(touches, before.times().calledAt(), before.attempt().skate(), before.window());
	}

	private static String reason(ClockView.Tap tap) {
		if (tap.cause() != null) {
			return tap.cause().words();
		}
		return (tap.marking() != null) ? tap.marking().words() : tap.words();
	}

	/** An act as the referee gives it. */
	private record Touch(ClockView.ClockAct act, @Nullable InterruptionCause cause, Reskates.@Nullable Marking marking,
			String words) {

		/**
		 * Never before the touch that was there already, whatever the machine's clock
		 * does.
		 */
		ClockView.Tap at(ClockView clock, Instant received, Actor actor) {
			List<ClockView.Tap> log = clock.log();
			Instant latest = log.isEmpty() ? received : log.get(log.size() - 1).noted().notedAt();
			String about = (this.act == ClockView.ClockAct.TAKE_BACK) ? Objects.requireNonNull(clock.last()).words()
					: this.words;
			return new ClockView.Tap(clock.touches() + 1, this.act, this.cause, this.marking, about,
					new ClockView.Tap.Noted(actor.name(), received.isBefore(latest) ? latest : received));
		}

	}

}
