package rimebook.performances;

/**
 * Something else that would stand on a card or list of a closed performance: what a
 * correction would bring is looked at before it is decided.
 */
public interface SupposedChange {

	/** Whose card or list. */
	PerformanceId performance();

}
