package rimebook.points;

/** Who noted a deduction that somebody else keys in. */
public enum DeductionNoter {

	/** Whoever keys it in. */
	SELF(""),

	/** The technical panel, such as for falls and illegal elements. */
	TECHNICAL_PANEL("technical panel"),

	/** The majority of the judges with the referee, such as for the costume. */
	JUDGES("majority of the panel");

	private final String words;

	DeductionNoter(String words) {
		this.words = words;
	}

	/** Who stands beside the deduction, when that person keyed it in. */
	String words(String person) {
		return this.words.isEmpty() ? person : this.words + ", keyed in by " + person;
	}

}
