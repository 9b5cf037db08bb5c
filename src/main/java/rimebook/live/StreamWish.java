package rimebook.live;

import org.jspecify.annotations.Nullable;

/**
 * How somebody wants a stream.
 *
 * @param part the part of the page they look at, {@code null} if they only want to hear
 * that something moved
 * @param packed whether they take it compressed
 */
record StreamWish(@Nullable RenditionKey part, boolean packed) {

	/** Signals alone, as they are. */
	static final StreamWish PLAIN = new StreamWish(null, false);

}
