package rimebook.accounts;

import java.util.Locale;

/**
 * What somebody may do. A person holds any number of roles but never {@link #JUDGE},
 * which only a paired seat has. Where a person holds several, the one that stands first
 * here and fits the page is the one they act in.
 */
public enum Role {

	/** Enters teams, keeps clubs, teams and competitions. */
	SECRETARY,

	/** Draws, runs segments, closes cards, decides protests, signs. */
	REFEREE,

	/** Proposes corrections, checks and countersigns results. */
	ACCOUNTANT,

	/** Calls, reviews and authorises elements. */
	TECHNICAL,

	/** Reads the running sheet. */
	ANNOUNCER,

	/** Gives people their roles, and may do what every other person may. */
	ADMINISTRATOR,

	/** Marks from one seat of one panel. */
	JUDGE;

	/** The name Spring Security knows the role by: {@code ROLE_REFEREE}. */
	public String authority() {
		return "ROLE_" + name();
	}

	/** The word on the record: {@code "referee"}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

}
