package rimebook.panels;

import java.util.Locale;

import rimebook.wording.Sentence;

/** What somebody does on the panel of an event. */
public enum SeatKind {

	/** Runs the panel, closes cards, signs the result. */
	REFEREE,

	/** Helps the referee, often at the ice. */
	ASSISTANT_REFEREE,

	/** Marks, with a card and a code. */
	JUDGE,

	/** Marks like a judge, and counts only in place of one. */
	SUBSTITUTE,

	/** Answers for the computation and signs the result with the referee. */
	ACCOUNTANT,

	/** Speaks to the hall. */
	ANNOUNCER,

	/** Stands beside the referee with the watches. */
	TIMEKEEPER,

	/** Leads the technical panel; points judging only. */
	TECHNICAL_CONTROLLER,

	/** Calls elements; points judging only. */
	TECHNICAL_SPECIALIST,

	/** Keys in what the technical panel calls; points judging only. */
	DATA_OPERATOR;

	/** The seat as people call it: "Judge 3", "Referee". */
	public Sentence spoken(int number) {
		Sentence kind = Sentence.of("seat." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
		return (this == JUDGE || number > 1) ? Sentence.of("seat.numbered", kind, number) : kind;
	}

	/** The same in English, as on the record. */
	public String label(int number) {
		return spoken(number).english();
	}

	/**
	 * Tell whether whoever sits there has a card, and a tablet that joins with a code.
	 */
	public boolean hasCard() {
		return this == JUDGE || this == SUBSTITUTE;
	}

	/**
	 * Tell whether nobody may take the seat who is bound to a team. Announcer and
	 * timekeeper decide nothing and are free.
	 */
	public boolean isBoundByConflicts() {
		return this != ANNOUNCER && this != TIMEKEEPER;
	}

	/**
	 * Tell whether one person cannot hold both seats in an event, whichever was taken
	 * first: who has a card, as judge or substitute, has one only and neither leads nor
	 * calls; the referee is not the own assistant (common practice). Referee and
	 * accountant sign the same result, and two people have to.
	 */
	public boolean excludes(SeatKind other) {
		return (hasCard() && other.isBusyWithEveryTeam()) || (other.hasCard() && isBusyWithEveryTeam())
				|| (leads() && other.leads()) || (signs() && other.signs());
	}

	private boolean signs() {
		return this == REFEREE || this == ACCOUNTANT;
	}

	private boolean leads() {
		return this == REFEREE || this == ASSISTANT_REFEREE;
	}

	private boolean isBusyWithEveryTeam() {
		return hasCard() || leads() || this == TECHNICAL_CONTROLLER || this == TECHNICAL_SPECIALIST
				|| this == DATA_OPERATOR;
	}

}
