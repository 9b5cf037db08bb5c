package rimebook.accounts;

/** How it stands with a tablet that asked for a seat. */
public enum SeatWait {

	/** The referee has not answered yet. */
	WAITING,

	/** It has the seat. */
	TAKEN,

	/** The referee said no. */
	REFUSED,

	/** Nobody knows the question any more: too old, or another tablet asked since. */
	GONE

}
