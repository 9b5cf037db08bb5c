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
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

import org.jspecify.annotations.Nullable;

/** Rendered bytes, plain and compressed, with a tag that changes when a byte does. */
final class Rendition {

	private final String contentType;

	private final byte[] plain;

	private final byte[] zipped;

	private final String tag;

	private final String zippedTag;

	private final String part;

	private final AtomicReferenceArray<byte @Nullable []> heads = new AtomicReferenceArray<>(4);

	private Rendition(String contentType, byte[] plain, String part) {
		this.contentType = contentType;
		this.part = part;
		this.plain = plain;
		this.zipped = zip(plain);
		String digest = digest(plain);
		this.tag = "\"" + digest + "\"";
		this.zippedTag = "\"" + digest + "-z\"";
	}

	static Rendition of(String contentType, String text) {
		return of(contentType, text.getBytes(StandardCharsets.UTF_8));
	}

	/**
	 * Bytes as they are.
	 * @param bytes no longer changed by the caller
	 */
	static Rendition of(String contentType, byte[] bytes) {
		return new Rendition(contentType, bytes, "");
	}

	/** A page, which may show a part that moves. */
	static Rendition ofPage(String html) {
		Optional<MovingPart> part = MovingPart.in(html);
		String text = part.map((moving) -> moving.tagged(html)).orElse(html);
		return new Rendition("text/html;charset=UTF-8", text.getBytes(StandardCharsets.UTF_8),
				part.map(MovingPart::tag).orElse(""));
	}

	/** What this one shows and an earlier one does not, see {@link MovingPart}. */
	Rendition since(Rendition earlier) {
		Optional<MovingPart> before = MovingPart.in(earlier.text());
		return MovingPart.in(text())
			.flatMap((now) -> before.map(now::since))
			.map((text) -> new Rendition(this.contentType, text.getBytes(StandardCharsets.UTF_8), this.part))
			.orElse(this);
	}

	/** The moving part of a page alone. */
	Rendition ofItsPart() {
		return MovingPart.in(text())
			.map((moving) -> new Rendition(this.contentType, moving.html().getBytes(StandardCharsets.UTF_8), this.part))
			.orElse(this);
	}

	/** The tag of the moving part that it shows, empty without one. */
	String part() {
		return this.part;
	}

	private String text() {
		return new String(this.plain, StandardCharsets.UTF_8);
	}

	/** This one if the other says the same, so that equal bytes are kept once. */
	Rendition orSame(Rendition other) {
		return Arrays.equals(this.plain, other.plain) ? this : other;
	}

	String contentType() {
		return this.contentType;
	}

	/** Tell whether it is a page for people, which is read where it is. */
	boolean isPage() {
		return this.contentType.startsWith("text/html");
	}

	byte[] bytes(boolean compressed) {
		return compressed ? this.zipped : this.plain;
	}

	/** How many bytes it keeps. */
	long size() {
		return (long) this.plain.length + this.zipped.length;
	}

	/** The bytes of a head that goes with it, made once. */
	byte[] head(boolean compressed, boolean unchanged, Supplier<String> maker) {
		int which = (compressed ? 1 : 0) + (unchanged ? 2 : 0);
		byte[] known = this.heads.get(which);
		if (known == null) {
			known = maker.get().getBytes(StandardCharsets.US_ASCII);
			this.heads.set(which, known);
		}
		return known;
	}

	/** The strong tag of these very bytes: the compressed ones have their own. */
	String etag(boolean compressed) {
		return compressed ? this.zippedTag : this.tag;
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

	/** A short digest of a text. */
	static String digest(String text) {
		return digest(text.getBytes(StandardCharsets.UTF_8));
	}

	private static String digest(byte[] plain) {
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
