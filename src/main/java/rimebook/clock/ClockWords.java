package rimebook.clock;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/** What the panel is told when the programme is broken off or goes on. */
final class ClockWords {

	private ClockWords() {
	}

	/** The notice to the panel; empty for what concerns the time alone. */
	static Optional<String> notice(ClockView.Tap tap, ClockView before, ClockView after) {
		return switch (tap.act()) {
			case INTERRUPT -> Optional.of("Interrupted: " + Objects.requireNonNull(tap.cause()).words());
			case RESUME -> Optional.of(resumed(tap, before));
			case RESKATE ->
				Optional.of("Re-skate from the beginning: " + Objects.requireNonNull(tap.marking()).words());
			case TAKE_BACK -> takenBack(before, after);
			case START, STOP -> Optional.empty();
		};
	}

	private static String resumed(ClockView.Tap tap, ClockView before) {
		Duration pause = Objects.requireNonNull(before.pause()).length(tap.noted().notedAt());
		return "Resumed at the point of " + (tap.words().isEmpty() ? "interruption" : tap.words()) + ", after "
				+ time(pause);
	}

	private static Optional<String> takenBack(ClockView before, ClockView after) {
		ClockView.ClockAct last = Objects.requireNonNull(before.last());
		if (last == ClockView.ClockAct.START || last == ClockView.ClockAct.STOP) {
			return Optional.empty();
		}
		ClockView.Interruption pause = after.pause();
		return Optional.of("Taken back: " + last.words()
				+ ((pause != null) ? "; the team is interrupted: " + pause.cause().words() : ""));
	}

	/** Minutes and seconds, as "3:42". */
	static String time(Duration duration) {
		return "%d:%02d".formatted(duration.toMinutes(), duration.toSecondsPart());
	}

	/** How the clock stands, for the record. */
	static String state(ClockView clock, ClockView.Tap tap) {
		return clock.state().words() + ", " + time(clock.skated(tap.noted().notedAt())) + " skated";
	}

}
