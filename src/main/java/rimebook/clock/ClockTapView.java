package rimebook.clock;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.performances.ReskateMarking;

/**
 * One touch of the clock.
 *
 * @param sequence 1 for the first touch of a performance
 * @param cause why it was interrupted; {@code null} for other acts
 * @param marking what is marked in a re-skate; {@code null} for other acts
 * @param words the point from which the team goes on, or the act that was taken back;
 * else empty
 * @param notedAt when the service received it, UTC
 */
public record ClockTapView(int sequence, ClockAct act, @Nullable InterruptionCause cause,
		@Nullable ReskateMarking marking, String words, String notedBy, Instant notedAt) {
}
