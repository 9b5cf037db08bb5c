package rimebook.rosters;

/** What somebody does on a roster. */
public enum PlaceRole {

	/** Skates. */
	SKATES,

	/** Stands by, and skates when somebody leaves. */
	ALTERNATE,

	/** Was on the roster and is no longer. */
	LEFT;

	/** The role on the record. */
	String inWords() {
		return switch (this) {
			case SKATES -> "skates";
			case ALTERNATE -> "alternate";
			case LEFT -> "left the roster";
		};
	}

}
