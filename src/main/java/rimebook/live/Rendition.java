package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** Rendered bytes, plain and compressed, with a tag that changes when a byte does. */
final class Rendition {

	private final String contentType;

	private final byte[] plain;

	private final byte[] zipped;

	private final String tag;

	private Rendition(String contentType, byte[] plain) {
		this.contentType = contentType;
		this.plain = plain;
		this.zipped = zip(plain);
		this.tag = tag(plain);
	}

	static Rendition of(String contentType, String text) {
		return of(contentType, text.getBytes(StandardCharsets.UTF_8));
	}

	/**
	 * Bytes as they are.
	 * @param bytes no longer changed by the caller
	 */
	static Rendition of(String contentType, byte[] bytes) {
		return new Rendition(contentType, bytes);
	}

	/** This one if the other says the same, so that equal bytes are kept once. */
	Rendition orSame(Rendition other) {
		return Arrays.equals(this.plain, other.plain) ? this : other;
	}

	String contentType() {
		return this.contentType;
	}

	byte[] bytes(boolean compressed) {
		return compressed ? this.zipped : this.plain;
	}

	/** How many bytes it keeps. */
	long size() {
		return (long) this.plain.length + this.zipped.length;
	}

	/** The strong tag of these very bytes: the compressed ones have their own. */
	String etag(boolean compressed) {
		return compressed ? "\"" + this.tag + "-z\"" : "\"" + this.tag + "\"";
	}

	/** Tell whether an If-None-Match header names this content in either form. */
	boolean isNamedIn(String ifNoneMatch) {
		return ifNoneMatch.strip().equals("*") || ifNoneMatch.contains(etag(false)) || ifNoneMatch.contains(etag(true));
	}

	private static byte[] zip(byte[] plain) {
		ByteArrayOutputStream zipped = new ByteArrayOutputStream(plain.length / 4 + 64);
		try (GZIPOutputStream zip = new SmallZip(zipped)) {
			zip.write(plain);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return zipped.toByteArray();
	}

	private static String tag(byte[] plain) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(plain), 0, 12);
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java has SHA-256", ex);
		}
	}

	/** Zipped once and sent to thousands: as small as it gets. */
	private static final class SmallZip extends GZIPOutputStream {

		SmallZip(OutputStream out) throws IOException {
			super(out);
			this.def.setLevel(Deflater.BEST_COMPRESSION);
		}

	}

}
