package rimebook.clock;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.performances.Reskates;

/** Reads the clock from its touches: the same touches always give the same clock. */
final class ClockReading {

	private final Deque<ClockView.Tap> counting = new ArrayDeque<>();

	private final List<ClockView.Interruption> interruptions = new ArrayList<>();

	private ClockView.ClockState state = ClockView.ClockState.WAITING;

	private int run;

	private Reskates.@Nullable Marking marking;

	private @Nullable Instant startedAt;

	private @Nullable Instant stoppedAt;

	private ClockReading(int skate) {
		this.run = skate;
		this.marking = (skate > 1) ? Reskates.Marking.RESKATED_ONLY : null;
	}

	/**
	 * Read the clock.
	 * @param taps every touch, oldest first
	 * @param calledAt when the team was called; {@code null} where that sets no limit
	 * @param skate 1, and one more for each time that the whole programme is skated again
	 */
	static ClockView of(List<ClockView.Tap> taps, @Nullable Instant calledAt, int skate,
			ClockView.ProgrammeWindow window) {
		ClockReading reading = new ClockReading(skate);
		taps.forEach(reading::sort);
		reading.counting.forEach(reading::apply);
		ClockView.Tap last = reading.counting.peekLast();
		return new ClockView(reading.state, new ClockView.Attempt(skate, reading.run, reading.marking),
				new ClockView.Times(calledAt, reading.startedAt, reading.stoppedAt, reading.interruptions),
				(last != null) ? last.act() : null, window, taps);
	}

	private void sort(ClockView.Tap tap) {
		if (tap.act() == ClockView.ClockAct.TAKE_BACK) {
			this.counting.pollLast();
		}
		else {
			this.counting.addLast(tap);
		}
	}

	private void apply(ClockView.Tap tap) {
		switch (tap.act()) {
			case START -> start(tap.noted().notedAt());
			case STOP -> stop(tap.noted().notedAt());
			case INTERRUPT -> interrupt(tap);
			case RESUME -> resume(tap.noted().notedAt());
			case RESKATE -> reskate(tap);
			case TAKE_BACK -> throw new IllegalStateException("taken back twice");
		}
	}

	private void start(Instant at) {
		this.startedAt = at;
		this.state = ClockView.ClockState.RUNNING;
	}

	private void stop(Instant at) {
		this.stoppedAt = at;
		this.state = ClockView.ClockState.STOPPED;
	}

	private void interrupt(ClockView.Tap tap) {
		InterruptionCause cause = (tap.cause() != null) ? tap.cause() : InterruptionCause.RINK;
		Instant from = (this.state == ClockView.ClockState.INTERRUPTED) ? removeLast().from() : tap.noted().notedAt();
		this.interruptions.add(new ClockView.Interruption(cause, from, null));
		this.state = ClockView.ClockState.INTERRUPTED;
	}

	private void resume(Instant at) {
		ClockView.Interruption pause = removeLast();
		this.interruptions.add(new ClockView.Interruption(pause.cause(), pause.from(), at));
		this.state = ClockView.ClockState.RUNNING;
	}

	private ClockView.Interruption removeLast() {
		return this.interruptions.remove(this.interruptions.size() - 1);
	}

	private void reskate(ClockView.Tap tap) {
		this.run++;
		this.marking = tap.marking();
		this.startedAt = null;
		this.stoppedAt = null;
		this.interruptions.clear();
		this.state = ClockView.ClockState.WAITING;
	}

}
