package rimebook.panels.web;

import java.time.Duration;
import java.time.Instant;

/**
 * How long ago a tablet was heard of, in words.
 *
 * @param key the message key of the words
 * @param amount how many minutes, hours or days
 */
record Heard(String key, long amount) {

	private static final Duration NOW = Duration.ofSeconds(45);

	static Heard of(Instant then, Instant now) {
		Duration ago = Duration.between(then, now);
		if (ago.compareTo(NOW) < 0) {
			return new Heard("panels.heard.now", 0);
		}
		if (ago.toHours() == 0) {
			return new Heard("panels.heard.minutes", Math.max(1, ago.toMinutes()));
		}
		return (ago.toDays() == 0) ? new Heard("panels.heard.hours", ago.toHours())
				: new Heard("panels.heard.days", ago.toDays());
	}

}
