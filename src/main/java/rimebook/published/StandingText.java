package rimebook.published;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import org.springframework.stereotype.Component;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes standings as text and reads them back. Its own mapper, so that no setting of the
 * web layer can change the bytes of a published version.
 */
@Component
public class StandingText {

	private final JsonMapper mapper = JsonMapper.builder()
		.disable(SerializationFeature.INDENT_OUTPUT)
		.disable(EnumFeature.WRITE_ENUMS_USING_TO_STRING)
		.build();

	/** The same standing is always written in the same bytes. */
	public String write(Standing standing) {
		return this.mapper.writeValueAsString(standing);
	}

	/**
	 * The standing that a version's stored text says, of this release or an earlier one.
	 */
	public Standing read(String body) {
		return this.mapper.readValue(body, Standing.class);
	}

	/** The SHA-256 of the text in UTF-8, in hexadecimal. */
	public static String fingerprint(String body) {
		try {
			MessageDigest digest = MessageDigest.getInstance("SHA-256");
			return HexFormat.of().formatHex(digest.digest(body.getBytes(StandardCharsets.UTF_8)));
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java has SHA-256", ex);
		}
	}

}
