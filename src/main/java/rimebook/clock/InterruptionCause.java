package rimebook.clock;

/** Why a programme was broken off; what follows differs. */
public enum InterruptionCause {

	/** The music stopped, or its tempo or quality is deficient. */
	MUSIC("music", false),

	/** Light, ice, or anything else that the team did not cause. */
	RINK("light, ice or outside", false),

	/** A skater is hurt or unwell. */
	INJURY("injury", true),

	/** Boot, blade, costume or prop. */
	EQUIPMENT("equipment", true);

	/** From memory, as the stand says. */
	private static final int LONGEST_OWN = 3 * 60;

	/**
	 * ISU rule 964, paragraph 2, by the Referees Handbook, Synchronized Skating, 2020.
	 */
	private static final int LONGEST_WITHOUT_WARM_UP = 10 * 60;

	private final String words;

	private final boolean own;

	InterruptionCause(String words, boolean own) {
		this.words = words;
		this.own = own;
	}

	/** Tell whether it came from the team: then the time is limited and may cost. */
	public boolean isOwn() {
		return this.own;
	}

	/**
	 * The seconds after which something else follows: for what came from the team the
	 * longest interruption, otherwise the longest without a second warm-up.
	 */
	public int limit() {
		return this.own ? LONGEST_OWN : LONGEST_WITHOUT_WARM_UP;
	}

	String words() {
		return this.words;
	}

}
