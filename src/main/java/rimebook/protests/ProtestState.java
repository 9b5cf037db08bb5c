package rimebook.protests;

/** Where a protest stands. */
public enum ProtestState {

	/** Received in time and waiting for the referee's decision. */
	FILED,

	/** Not heard: out of time or about an evaluation; the rule is named as grounds. */
	REFUSED,

	/** Heard and denied by the referee. */
	DENIED,

	/** Heard and upheld by the referee; what follows is a correction of its own. */
	UPHELD

}
