package rimebook.performances;

/** What the judges mark when a programme is skated again; the rulebook in force says. */
public enum ReskateMarking {

	/** Only the programme that is skated again. */
	RESKATED_ONLY("mark only the re-skated programme"),

	/** What came before the interruption stands as first skated. */
	AS_FIRST_SKATED("the part before the interruption stays as first marked");

	private final String words;

	ReskateMarking(String words) {
		this.words = words;
	}

	/** What is marked, as the panel is told. */
	public String words() {
		return this.words;
	}

}
