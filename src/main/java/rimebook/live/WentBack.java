package rimebook.live;

/**
 * Tells how often the service was started from a copy. What is published then begins anew
 * from an earlier count, and nobody who follows may take it for what was seen before. A
 * later module that knows declares a bean.
 */
@FunctionalInterface
public interface WentBack {

	/** How often, 0 for never. */
	int times();

}
