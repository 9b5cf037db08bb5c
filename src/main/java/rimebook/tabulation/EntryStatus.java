package rimebook.tabulation;

import java.util.Locale;

import rimebook.wording.Sentence;

/**
 * How a team came through a segment or an event; in the order in which teams without a
 * place are listed.
 */
public enum EntryStatus {

	/** Skated and marked: has a card of each judge and gets a place. */
	SKATED,

	/** Began and could not complete the programme: no marks, no place. */
	NOT_FINISHED,

	/** Did not start: no marks, no place. */
	WITHDRAWN,

	/** Removed by the referee, before or after being marked: no place. */
	DISQUALIFIED;

	Sentence spoken() {
		return Sentence.of("tabulation.status." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

}
