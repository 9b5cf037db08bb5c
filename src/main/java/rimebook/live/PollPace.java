package rimebook.live;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Component;

/**
 * Tells pages that have no stream when to look again: soon while they are few, and later
 * the more they are, so that they never ask more often than the house can bear.
 */
@Component
class PollPace {

	/** Seconds until the next look. */
	static final String WAIT = "Rink-Wait";

	/** Whether a page may try for a stream. */
	static final String STREAMS = "Rink-Streams";

	private static final Duration WINDOW = Duration.ofSeconds(5);

	private static final long LONGEST = 60;

	private final FollowerRegister followers;

	private final LiveSettings settings;

	private final Clock clock;

	private Instant since;

	private long polls;

	private long wait;

	PollPace(FollowerRegister followers, LiveSettings settings, Clock clock) {
		this.followers = followers;
		this.settings = settings;
		this.clock = clock;
		this.since = clock.instant();
		this.wait = shortest();
	}

	/**
	 * Say with this answer when to come again, and keep no connection open until then.
	 */
	void pace(HttpServletRequest request, HttpServletResponse response) {
		response.setHeader(WAIT, Long.toString(next()));
		response.setHeader(STREAMS, hasRoom() ? "open" : "full");
		if (request.getProtocol().startsWith("HTTP/1.")) {
			response.setHeader("Connection", "close");
		}
	}

	/** The same as lines of a head. */
	String lines() {
		return WAIT + ": " + next() + "\r\n" + STREAMS + ": " + (hasRoom() ? "open" : "full")
				+ "\r\nConnection: close\r\n";
	}

	/** Count a poll; the number of seconds to wait for the next. */
	synchronized long next() {
		Duration passed = Duration.between(this.since, this.clock.instant());
		if (passed.compareTo(WINDOW) >= 0) {
			measure(passed);
		}
		this.polls++;
		return this.wait;
	}

	/** Whoever polls is seen once in each wait. */
	private void measure(Duration passed) {
		long pages = this.polls * 1000 / passed.toMillis() * this.wait;
		this.wait = Math.min(LONGEST, Math.max(shortest(), ceiling(pages, this.settings.pollsASecond())));
		this.since = this.since.plus(passed);
		this.polls = 0;
	}

	private static long ceiling(long number, long divisor) {
		return (number + divisor - 1) / divisor;
	}

	private long shortest() {
		return Math.max(1, this.settings.poll().toSeconds());
	}

	/** So much room that not everybody who tries is turned away. */
	private boolean hasRoom() {
		return this.followers.count() < this.settings.streams() / 4 * 3;
	}

}
