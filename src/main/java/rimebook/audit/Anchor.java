package rimebook.audit;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * A line of the record as somebody keeps it outside the database: its number and its
 * digest, which covers the line and, by the chain, all lines before it. Whoever writes
 * the record anew cannot make these lines fit the digest again.
 *
 * <p>
 * Its text is one line: {@code line 1234 3fa9… 2026-11-25T14:02:11.000Z}, and behind it,
 * where there is one, {@code signed} with a signature of exactly the text before, and
 * {@code seen} with the time at which a device got it, by the device's own clock. Whoever
 * copies it from paper may leave out the word {@code line}, the time and all digits but
 * the first twelve.
 *
 * @param line the number of the line
 * @param digest its digest in small hexadecimal digits, or the first 12 or more of these
 * @param writtenAt when the line was written, {@code null} where that was not kept
 * @param signature Ed25519 over {@link #statement}, in URL-safe Base64, empty if unsigned
 * @param seenAt when it was seen, by the clock of who keeps it, {@code null} if unknown
 */
public record Anchor(long line, String digest, @Nullable Instant writtenAt, String signature,
		@Nullable Instant seenAt) {

	private static final int SHORT = 16;

	private static final String TIME = "\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(?:\\.\\d{1,9})?Z";

	private static final Pattern TEXT = Pattern
		.compile("(?:line\\s+)?(\\d{1,18}):?\\s+([0-9a-fA-F]{12,64})(?:…|\\.{3})?" + "(?:\\s+(" + TIME
				+ "))?(?:\\s+signed\\s+([A-Za-z0-9_-]{86}))?(?:\\s+seen\\s+(" + TIME + "))?");

	/** As it comes from the record, without signature. */
	static Anchor of(long line, String digest, Instant writtenAt) {
		return new Anchor(line, digest, writtenAt, "", null);
	}

	/**
	 * Read one from its text.
	 * @return empty if that is none
	 */
	public static Optional<Anchor> parse(String text) {
		Matcher found = TEXT.matcher(text.strip());
		if (!found.matches()) {
			return Optional.empty();
		}
		try {
			String signature = found.group(4);
			return Optional.of(new Anchor(Long.parseLong(found.group(1)), found.group(2).toLowerCase(Locale.ROOT),
					time(found.group(3)), (signature != null) ? signature : "", time(found.group(5))));
		}
		catch (DateTimeException ex) {
			return Optional.empty();
		}
	}

	private static @Nullable Instant time(@Nullable String text) {
		return (text != null) ? Instant.parse(text) : null;
	}

	/** The same with a signature. */
	Anchor signed(String signature) {
		return new Anchor(this.line, this.digest, this.writtenAt, signature, this.seenAt);
	}

	/** Tell whether somebody signed it; not whether the signature is good. */
	public boolean isSigned() {
		return !this.signature.isEmpty();
	}

	/** The first digits, enough to compare by eye. */
	public String shortDigest() {
		return this.digest.substring(0, Math.min(SHORT, this.digest.length()));
	}

	/** What a signature covers: the text without what stands behind the time. */
	public String statement() {
		return "line " + this.line + " " + this.digest
				+ ((this.writtenAt != null) ? " " + ChainDigest.time(this.writtenAt) : "");
	}

	byte[] statementBytes() {
		return statement().getBytes(StandardCharsets.US_ASCII);
	}

	/** Its text, which {@link #parse} reads. */
	public String text() {
		return statement() + (isSigned() ? " signed " + this.signature : "")
				+ ((this.seenAt != null) ? " seen " + ChainDigest.time(this.seenAt) : "");
	}

}
