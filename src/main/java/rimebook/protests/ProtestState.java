package rimebook.protests;

import java.util.EnumSet;
import java.util.Set;

/** Where a protest stands. */
public enum ProtestState {

	/**
	 * Written down after the time was over, as handed in before: a second official
	 * confirms that, or it is not heard.
	 */
	UNCONFIRMED,

	/** Received in time and waiting for the referee's decision. */
	FILED,

	/** Not heard: out of time or about an evaluation; the rule is named as grounds. */
	REFUSED,

	/** Heard and denied by the referee. */
	DENIED,

	/** Heard and upheld by the referee; what follows is a correction of its own. */
	UPHELD;

	/** The states in which somebody still has to decide something. */
	static Set<ProtestState> open() {
		return EnumSet.of(UNCONFIRMED, FILED);
	}

}
