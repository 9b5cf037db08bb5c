package rimebook.draw;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.HexFormat;

/**
 * The lot of one entry in one draw: the SHA-256 digest (FIPS 180-4) of the UTF-8 text
 * {@code seed|segment|team|club}, in 64 small hexadecimal digits. Lower tickets start
 * earlier.
 * <p>
 * The names are taken as they stand in the competition at the moment of the draw, in
 * Unicode normal form C, so that an accented letter typed on another machine gives the
 * same ticket. The text is kept with the order, since a name may be mended later. The
 * club is part of the text because two clubs may send teams of the same name. Anyone can
 * repeat a ticket with a shell:
 *
 * <pre>{@code printf '%s' 'seed|segment|team|club' | sha256sum}</pre>
 *
 * @param text the text that is digested
 */
public record DrawTicket(String text) {

	public DrawTicket {
		text = Normalizer.normalize(text, Normalizer.Form.NFC);
	}

	/** Write the ticket of a team in the draw of a segment. */
	public static DrawTicket of(String seed, String segment, String team, String club) {
		return new DrawTicket(String.join("|", seed, segment, team, club));
	}

	/**
	 * The text that is digested. Public because the migration that keeps the texts of
	 * earlier draws calls it by name on H2.
	 */
	public static String textOf(String seed, String segment, String team, String club) {
		return of(seed, segment, team, club).text();
	}

	/** The shell command that repeats the ticket. */
	public String command() {
		return "printf '%s' '" + this.text.replace("'", "'\\''") + "' | sha256sum";
	}

	/** The digest in 64 hexadecimal digits. */
	public String hex() {
		return HexFormat.of().formatHex(sha256().digest(this.text.getBytes(StandardCharsets.UTF_8)));
	}

	private static MessageDigest sha256() {
		try {
			return MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

}
