package rimebook.stand.web;

import java.time.Duration;
import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * A time that is shown: one that stands, or one that runs since a moment. The page goes
 * on counting from the same moment, so both never differ.
 *
 * @param since since when it runs, {@code null} for one that stands
 * @param still the seconds of one that stands
 */
record ClockFace(@Nullable Instant since, int still) {

	static final ClockFace BLANK = new ClockFace(null, 0);

	static ClockFace runningSince(Instant since) {
		return new ClockFace(since, 0);
	}

	static ClockFace standing(Duration time) {
		return new ClockFace(null, (int) time.toSeconds());
	}

	/** The whole seconds to be shown at that moment. */
	public int seconds(Instant now) {
		return (this.since == null) ? this.still : (int) Math.max(0, Duration.between(this.since, now).toSeconds());
	}

	/** The time to be shown at that moment, as "3:42". */
	public String shown(Instant now) {
		return words(seconds(now));
	}

	/** Tell whether the seconds at that moment are in a range, both ends included. */
	public boolean isIn(Instant now, int least, int most) {
		int seconds = seconds(now);
		return seconds >= least && seconds <= most;
	}

	/**
	 * The moment since which it runs, as the page's own clock counts; empty if it stands.
	 */
	public String origin() {
		return (this.since != null) ? String.valueOf(this.since.toEpochMilli()) : "";
	}

	/** Seconds as "3:42". */
	static String words(int seconds) {
		return "%d:%02d".formatted(seconds / 60, seconds % 60);
	}

}
