package rimebook.rulings;

import java.util.Locale;

/** What a question is about. */
public enum RulingTopic {

	/** A planned element or move. */
	ELEMENT,

	/** What the team wears. */
	COSTUME,

	/** What the team carries or puts on the ice. */
	PROP,

	/** What the team skates to. */
	MUSIC;

	String words() {
		return name().toLowerCase(Locale.ROOT);
	}

}
