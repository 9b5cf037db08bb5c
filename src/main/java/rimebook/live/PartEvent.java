package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What differs on a page, as a server-sent event named {@code part}, and after it the
 * signals that it goes with; made once for all who look at that page.
 *
 * @param signals what is told with it, for whoever cannot read it any more
 * @param plain as it is
 * @param packed in blocks of {@link StreamPacking}
 */
record PartEvent(List<Signal> signals, byte[] plain, byte[] packed) {

	private static final byte[] NAME = "event: part\n".getBytes(StandardCharsets.US_ASCII);

	static PartEvent of(Rendition difference, List<Signal> signals) {
		String lines = new String(difference.bytes(false), StandardCharsets.UTF_8).replace("\r", "")
			.replace("\n", "\ndata: ");
		byte[] data = ("data: " + lines + "\n\n").getBytes(StandardCharsets.UTF_8);
		byte[] words = all(signals.stream().map(Signal::event).toList());
		return new PartEvent(List.copyOf(signals), all(List.of(NAME, data, words)),
				all(List.of(StreamPacking.stored(NAME), StreamPacking.deflated(data), StreamPacking.stored(words))));
	}

	byte[] bytes(boolean asPacked) {
		return asPacked ? this.packed : this.plain;
	}

	private static byte[] all(List<byte[]> pieces) {
		ByteArrayOutputStream all = new ByteArrayOutputStream();
		pieces.forEach(all::writeBytes);
		return all.toByteArray();
	}

}
