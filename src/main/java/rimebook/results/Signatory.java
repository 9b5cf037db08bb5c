package rimebook.results;

/** Whose signatures make a result official; they are two different people. */
public enum Signatory {

	/** The referee of the event. */
	REFEREE("referee"),

	/** The accountant who answers for the computation. */
	ACCOUNTANT("accountant");

	private final String words;

	Signatory(String words) {
		this.words = words;
	}

	String words() {
		return this.words;
	}

}
