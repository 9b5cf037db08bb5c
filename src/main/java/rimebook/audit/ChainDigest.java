package rimebook.audit;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.Locale;

/** The digest of a line, as the package describes it. */
final class ChainDigest {

	/** What stands before line 1. */
	static final String START = "0".repeat(64);

	private static final DateTimeFormatter TIME = DateTimeFormatter
		.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
		.withZone(ZoneOffset.UTC);

	private final MessageDigest sha256;

	private ChainDigest() {
		try {
			this.sha256 = MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

	/**
	 * The digest that the line should have, whatever it says it has. A line of the older
	 * form that has an identity all the same got it afterwards, and fits no digest.
	 */
	static String of(RecordLine line) {
		boolean first = line.link().form() == RecordLine.FORM_WITHOUT_ID && line.who().actorId().isEmpty()
				&& line.thing().evidence().isEmpty();
		return first ? ofFirstForm(line)
				: of(Integer.toString(line.link().form()), Long.toString(line.number()), time(line.writtenAt()),
						line.who().actor(), line.who().actorId(), line.who().role(), line.who().device(),
						line.thing().subject(), line.thing().subjectId(), line.change().action(),
						line.change().before(), line.change().after(), line.change().reason(), line.thing().evidence(),
						line.link().previousDigest());
	}

	private static String ofFirstForm(RecordLine line) {
		return of(Long.toString(line.number()), time(line.writtenAt()), line.who().actor(), line.who().role(),
				line.who().device(), line.thing().subject(), line.thing().subjectId(), line.change().action(),
				line.change().before(), line.change().after(), line.change().reason(), line.link().previousDigest());
	}

	/** The digest of texts one after the other, each with its length before it. */
	static String of(String... fields) {
		ChainDigest digest = new ChainDigest();
		digest.add(fields);
		return HexFormat.of().formatHex(digest.sha256.digest());
	}

	static String time(Instant time) {
		return TIME.format(time);
	}

	private void add(String... fields) {
		for (String field : fields) {
			byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
			this.sha256.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
			this.sha256.update(bytes);
			this.sha256.update((byte) ',');
		}
	}

}
