package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.util.zip.Deflater;

/**
 * Compresses a stream in pieces that are made once and sent to everybody. Blocks of a
 * deflate stream (RFC 1951) need nothing of those before them if nobody looks back, and
 * the check at the end of a gzip file (RFC 1952) never comes, since a stream has no end.
 */
final class StreamPacking {

	private static final byte[] BEGINNING = { 0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, (byte) 255 };

	/** What one block that is not compressed holds. */
	private static final int LARGEST = 0xffff;

	private StreamPacking() {
	}

	/** What every stream begins with. */
	static byte[] beginning() {
		return BEGINNING.clone();
	}

	/** Something short as it is. */
	static byte[] stored(byte[] bytes) {
		ByteArrayOutputStream blocks = new ByteArrayOutputStream(bytes.length + 5);
		for (int from = 0; from < bytes.length; from += LARGEST) {
			int length = Math.min(LARGEST, bytes.length - from);
			blocks.write(0);
			writeShort(blocks, length);
			writeShort(blocks, ~length);
			blocks.write(bytes, from, length);
		}
		return blocks.toByteArray();
	}

	/** Something long, once for many. */
	static byte[] deflated(byte[] bytes) {
		Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
		try {
			deflater.setInput(bytes);
			ByteArrayOutputStream blocks = new ByteArrayOutputStream(bytes.length / 4 + 64);
			byte[] some = new byte[8192];
			int count = some.length;
			while (count == some.length) {
				count = deflater.deflate(some, 0, some.length, Deflater.SYNC_FLUSH);
				blocks.write(some, 0, count);
			}
			return blocks.toByteArray();
		}
		finally {
			deflater.end();
		}
	}

	private static void writeShort(ByteArrayOutputStream out, int number) {
		out.write(number);
		out.write(number >> 8);
	}

}
