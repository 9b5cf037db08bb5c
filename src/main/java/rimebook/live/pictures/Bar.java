package rimebook.live.pictures;

/**
 * A bar, or a cell with its words.
 *
 * @param x where it begins
 * @param width how wide it is
 * @param y where its top is
 * @param height how high it is
 * @param look the class of its look
 */
public record Bar(String x, String width, String y, String height, String look) {

	private static final String ALL = "100%";

	/** A bar over the whole height. */
	static Bar lying(String x, String width, String look) {
		return new Bar(x, width, "0%", ALL, look);
	}

}
