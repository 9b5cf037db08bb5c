package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * What differs on a page, as a server-sent event named {@code part}, made once for all
 * who look at that page.
 *
 * @param plain as it is
 * @param packed in blocks of {@link StreamPacking}
 */
record PartEvent(byte[] plain, byte[] packed) {

	private static final byte[] NAME = "event: part\n".getBytes(StandardCharsets.US_ASCII);

	static PartEvent of(Rendition difference) {
		String lines = new String(difference.bytes(false), StandardCharsets.UTF_8).replace("\r", "")
			.replace("\n", "\ndata: ");
		byte[] data = ("data: " + lines + "\n\n").getBytes(StandardCharsets.UTF_8);
		return new PartEvent(both(NAME, data), both(StreamPacking.stored(NAME), StreamPacking.deflated(data)));
	}

	byte[] bytes(boolean asPacked) {
		return asPacked ? this.packed : this.plain;
	}

	private static byte[] both(byte[] one, byte[] other) {
		ByteArrayOutputStream both = new ByteArrayOutputStream(one.length + other.length);
		both.writeBytes(one);
		both.writeBytes(other);
		return both.toByteArray();
	}

}
