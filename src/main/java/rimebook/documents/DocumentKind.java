package rimebook.documents;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is printed, in the order in which a competition needs it. */
public enum DocumentKind {

	/** The teams of an event, with those that withdrew. */
	ENTRY_LIST(About.EVENT),

	/** What happens when on the days of an event, with the times of its teams. */
	TIMETABLE(About.EVENT),

	/** Who sits on the panel of an event. */
	PANEL(About.EVENT),

	/** What the referee ruled for the teams of an event. */
	RULINGS(About.EVENT),

	/** The starting order of a segment, in its warm-up groups. */
	STARTING_ORDER(About.SEGMENT),

	/** The places of a segment and how they came about. */
	SEGMENT_RESULT(About.SEGMENT),

	/** What every judge gave every team of a segment. */
	JUDGES_DETAIL(About.SEGMENT),

	/** What was corrected in a segment, and which places moved by it. */
	CORRECTION_NOTICE(About.SEGMENT),

	/** The protests about a segment and how they were decided. */
	PROTEST_DECISIONS(About.SEGMENT),

	/** What the referee reports of a segment: facts filled in, room to write. */
	REFEREES_REPORT(About.SEGMENT),

	/** The places of an event, and the way from the places of the segments to them. */
	FINAL_RESULT(About.EVENT),

	/** Who stands on which step. */
	MEDALS(About.EVENT),

	/** Who is called forward when, and who hands over. */
	CEREMONY(About.EVENT),

	/** A sheet for each team that has a place. */
	CERTIFICATES(About.EVENT),

	/** How the judges of an event agree. */
	PANEL_REVIEW(About.EVENT);

	private final About about;

	DocumentKind(About about) {
		this.about = about;
	}

	/** What its subject is. */
	public About about() {
		return this.about;
	}

	/**
	 * Tell whether it is for the referee and for nobody else, so that nothing offers it.
	 */
	public boolean isForTheRefereeAlone() {
		return this == PANEL_REVIEW;
	}

	/** Its name in addresses and messages: "entry-list". */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** The kind of that name in addresses, if there is one. */
	public static Optional<DocumentKind> ofWord(String word) {
		return Arrays.stream(values()).filter((kind) -> kind.word().equals(word)).findFirst();
	}

	/** What a document is about. */
	public enum About {

		/** A whole event. */
		EVENT,

		/** One segment. */
		SEGMENT

	}

}
