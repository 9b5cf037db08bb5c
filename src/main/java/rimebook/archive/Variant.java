package rimebook.archive;

/** How much of a competition an archive holds. */
public enum Variant {

	/** Everything, for whoever ran the competition. */
	WHOLE,

	/** Without personal data, for everybody; it can be checked but not restored. */
	PUBLIC

}
