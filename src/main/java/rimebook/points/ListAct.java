package rimebook.points;

/** What the technical desk does to the list of called elements. */
public enum ListAct {

	/** Call an element after the last one. */
	CALL,

	/** Put an element in before another. */
	INSERT,

	/** Call an element by another code. */
	CODE,

	/** Give an element another level. */
	LEVEL,

	/** Give the additional part of an element another level, or take the part away. */
	PART,

	/** Go on to the next downgrade that the table of values has, at last to none. */
	DOWNGRADE,

	/** Look at an element again, or settle that. */
	REVIEW,

	/** Say that an element missed its basic requirement, or take that back. */
	NO_VALUE,

	/** Say that an element is one too many, or take that back. */
	TOO_MANY,

	/** Move an element before the one before it. */
	EARLIER,

	/** Move an element behind the one after it. */
	LATER,

	/** Take an element out. */
	REMOVE,

	/** Put the list back as it was before its last change. */
	UNDO

}
