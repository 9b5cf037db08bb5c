package rimebook.timetable.plan;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * Something that speaks against a plan; it can be published all the same.
 *
 * @param kind what is wrong
 * @param block the block it shows at, {@code null} for none
 * @param at when it happens, {@link Instant#MAX} for what has no time
 * @param why the whole sentence
 */
public record Warning(Kind kind, @Nullable UUID block, Instant at, Sentence why) {

	/** What is wrong. */
	public enum Kind {

		/** An anchored block cannot begin when it should. */
		OVERRUN,

		/** A team is in two places at once. */
		TEAM,

		/** Somebody is in two places at once. */
		PERSON,

		/** More segments have music at once than there are desks. */
		MUSIC,

		/** A team has too little rest between its segments. */
		REST,

		/** Two teams of a club are too close for its changing rooms. */
		CHANGING,

		/** People skate too long on one ice. */
		ICE,

		/** It lasts longer than the rink is open. */
		CLOSING,

		/** Teams of a segment are in no block, or in two. */
		COVERAGE,

		/** A block is about a segment that does not take place. */
		GONE

	}

}
