package rimebook.pages;

/**
 * What a browser may load for a page and where the page may send: only what comes from
 * the service itself, and no script or style that stands within the page.
 */
public final class ContentPolicy {

	/** The directives of the header {@code Content-Security-Policy}. */
	public static final String DIRECTIVES = "default-src 'self'; img-src 'self' data:; object-src 'none'; "
			+ "base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

	/** No page needs them, so nothing that gets into one can ask for them. */
	public static final String FORBIDDEN_DEVICES = "accelerometer=(), browsing-topics=(), camera=(), "
			+ "display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), "
			+ "publickey-credentials-get=(), serial=(), usb=()";

	private ContentPolicy() {
	}

}
