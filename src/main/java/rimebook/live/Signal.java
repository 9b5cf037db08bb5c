package rimebook.live;

import java.nio.charset.StandardCharsets;

import org.jspecify.annotations.Nullable;

/**
 * Says that something changed, not what: whoever hears it fetches the page or the data
 * again. A signal repeats where the thing stands, so a lost one costs nothing and one
 * that comes twice does no harm.
 *
 * @param scope {@code segment}, or {@code times} for when teams are expected
 * @param id the segment's identity; the competition's for {@code times}
 * @param moment changes with everything the pages of the segment show, or with any
 * expected time
 * @param version the number of its newest standing, {@code null} for none
 * @param onIce the entry on the ice, {@code null} for none
 */
record Signal(String scope, String id, int moment, @Nullable Integer version, @Nullable String onIce) {

	/**
	 * A sign of life as a server-sent event named {@code alive}.
	 * @param within over how many milliseconds followers spread what they fetch
	 */
	static byte[] alive(int within) {
		return ("event: alive\ndata: {\"within\":" + within + "}\n\n").getBytes(StandardCharsets.UTF_8);
	}

	/** The signal as a server-sent event named {@code moved}. */
	byte[] event() {
		return ("event: moved\ndata: " + json() + "\n\n").getBytes(StandardCharsets.UTF_8);
	}

	/** Identities are UUIDs and the rest are numbers: nothing needs to be escaped. */
	String json() {
		return "{\"scope\":\"" + this.scope + "\",\"id\":\"" + this.id + "\",\"moment\":" + this.moment
				+ ",\"version\":" + this.version + ",\"onIce\":"
				+ ((this.onIce != null) ? "\"" + this.onIce + "\"" : "null") + "}";
	}

}
