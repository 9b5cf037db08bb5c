package rimebook.documents;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/**
 * What a document says, whatever the paper and the language.
 *
 * @param at what it is about
 * @param edition which state of it
 * @param rules the rule set that was applied; {@link Sentence#NONE} where none was
 * @param body what the template of its kind lays out
 */
record DocumentContent(Subject at, Edition edition, Sentence rules, Object body) {

	/**
	 * What a document is about.
	 *
	 * @param segment {@code null} for a whole event
	 */
	record Subject(CompetitionView competition, EventView event, @Nullable SegmentView segment) {

		/** Its part in the name of a file. */
		String slug() {
			return (this.segment != null) ? this.event.slug() + "-" + this.segment.slug() : this.event.slug();
		}

	}

	/**
	 * Which state of its subject a document shows.
	 *
	 * @param version of the standing, 0 where there are no versions
	 * @param standing how far it can be trusted to stay
	 * @param since when what it says became so, UTC
	 * @param fingerprint SHA-256 of the data, in hexadecimal
	 */
	record Edition(int version, Trust standing, Instant since, String fingerprint) {
	}

	/** How far a document can be trusted to stay true. */
	enum Trust {

		/** A standing that may still change. */
		PROVISIONAL,

		/** Signed by referee and accountant. */
		OFFICIAL,

		/** As things stood when it was made. */
		AS_OF

	}

}
