package rimebook.letters;

import java.util.Locale;

/** What a letter is about. */
public enum LetterKind {

	/** That a team is entered. */
	CONFIRMATION,

	/** What of a team is still missing. */
	MISSING,

	/** When a team is on the ice. */
	TIMETABLE,

	/** Where pages of a team are found. */
	LINK,

	/** Whatever somebody writes. */
	FREE;

	/** Tell whether there is nothing to write to a team of which nothing is told. */
	boolean restsOnFacts() {
		return this == MISSING || this == TIMETABLE || this == LINK;
	}

	/** Tell whether teams that withdrew may be written to as well. */
	boolean goesToWithdrawn() {
		return this == FREE;
	}

	/** The part of the keys of its texts that is its own. */
	String key() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** As on the record. */
	String inWords(int letters) {
		String kind = switch (this) {
			case CONFIRMATION -> "confirmation of entry";
			case MISSING -> "what is missing";
			case TIMETABLE -> "timetable";
			case LINK -> "link to a page";
			case FREE -> "free letter";
		};
		return ((letters == 1) ? "1 letter, " : letters + " letters, ") + kind;
	}

}
