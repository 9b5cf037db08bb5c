package rimebook.live;

import java.io.IOException;

/** The way out to one follower. No call ever waits for the other side. */
interface Line {

	/**
	 * Tell whether bytes are taken now. If not, the follower is told once they are.
	 */
	boolean isReady();

	/** Hand over bytes; only asked for after {@link #isReady()} said yes. */
	void write(byte[] bytes) throws IOException;

	/** Send what was handed over. */
	void flush() throws IOException;

	/** Hang up; doing so twice does no harm. */
	void end();

}
