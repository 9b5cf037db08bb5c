package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.ref.WeakReference;
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

/**
 * Rendered bytes with a tag that changes when a byte does. They are compressed when that
 * is asked for first: followers are told what differs before anybody asks for the whole.
 */
final class Rendition {

	/** How much smaller a page is compressed; others less, and these are small. */
	private static final int COMPRESSED = 8;

	private final String contentType;

	private final byte[] plain;

	private final String tag;

	private final String zippedTag;

	private final @Nullable PartPrint print;

	/**
	 * Wanted again at once or not at all, and ten times the size of what it was read
	 * from.
	 */
	private final WeakReference<MovingPart> moving;

	private final AtomicReferenceArray<byte @Nullable []> heads = new AtomicReferenceArray<>(4);

	private byte @Nullable [] zipped;

	private Rendition(String contentType, byte[] plain, @Nullable PartPrint print, @Nullable MovingPart moving) {
		this.contentType = contentType;
		this.print = print;
		this.moving = new WeakReference<>(moving);
		this.plain = plain;
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
		return new Rendition(contentType, bytes, null, null);
	}

	/** A page, which may show a part that moves. */
	static Rendition ofPage(String html) {
		MovingPart moving = MovingPart.in(html).orElse(null);
		String text = (moving != null) ? moving.tagged(html) : html;
		return new Rendition("text/html;charset=UTF-8", text.getBytes(StandardCharsets.UTF_8),
				(moving != null) ? moving.print() : null, moving);
	}

	/** What this one shows and an earlier one does not, see {@link MovingPart}. */
	Rendition since(PartPrint earlier) {
		return Optional.ofNullable(this.moving.get())
			.or(() -> MovingPart.in(text()))
			.map((now) -> now.since(earlier))
			.map((text) -> new Rendition(this.contentType, text.getBytes(StandardCharsets.UTF_8), this.print, null))
			.orElse(this);
	}

	/** What its moving part says, nothing without one. */
	Optional<PartPrint> print() {
		return Optional.ofNullable(this.print);
	}

	/** The tag of the moving part that it shows, empty without one. */
	String part() {
		return (this.print != null) ? this.print.tag() : "";
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
		return compressed ? zipped() : this.plain;
	}

	private synchronized byte[] zipped() {
		if (this.zipped == null) {
			this.zipped = zip(this.plain);
		}
		return this.zipped;
	}

	/** How many bytes it keeps, about: what is compressed is guessed at. */
	long size() {
		return this.plain.length + (long) this.plain.length / COMPRESSED;
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
