package rimebook.music;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.IntFunction;

/**
 * Reads pieces of {@value ChunkStore#CHUNK} bytes one after the other, of which the last
 * may be shorter. What is skipped is not read.
 */
final class ChunkStream extends InputStream {

	private final IntFunction<byte[]> chunks;

	private final long length;

	private long position;

	private int held = -1;

	private byte[] chunk = {};

	/**
	 * @param chunks gives the piece of a number from 0, empty where it is gone
	 */
	ChunkStream(IntFunction<byte[]> chunks, long length) {
		this.chunks = chunks;
		this.length = length;
	}

	@Override
	public int read() throws IOException {
		byte[] one = new byte[1];
		return (read(one, 0, 1) < 0) ? -1 : one[0] & 0xFF;
	}

	@Override
	public int read(byte[] into, int offset, int most) throws IOException {
		if (most == 0) {
			return 0;
		}
		if (this.position >= this.length) {
			return -1;
		}
		hold((int) (this.position / ChunkStore.CHUNK));
		int at = (int) (this.position % ChunkStore.CHUNK);
		int count = Math.min(most, this.chunk.length - at);
		if (count <= 0) {
			// Deleted while it was read: whoever reads must not take it for the end.
			throw new EOFException("The music was deleted while it was read");
		}
		System.arraycopy(this.chunk, at, into, offset, count);
		this.position += count;
		return count;
	}

	private void hold(int number) {
		if (number != this.held) {
			this.chunk = this.chunks.apply(number);
			this.held = number;
		}
	}

	@Override
	public long skip(long count) {
		long skipped = Math.max(0, Math.min(count, this.length - this.position));
		this.position += skipped;
		return skipped;
	}

}
