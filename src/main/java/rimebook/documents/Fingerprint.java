package rimebook.documents;

import tools.jackson.databind.json.JsonMapper;

import rimebook.published.StandingText;

/** The digest of data that has no version, made as that of a version is. */
final class Fingerprint {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private Fingerprint() {
	}

	/** The SHA-256 of what a record holds, in hexadecimal. */
	static String of(Object data) {
		return StandingText.fingerprint(JSON.writeValueAsString(data));
	}

}
