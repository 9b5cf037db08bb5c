package rimebook.pages;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Set;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Where other devices reach this house.
 *
 * @param base scheme, host and port without a closing slash: "http://192.168.4.2:8080"
 */
public record HouseAddress(String base) {

	private static final Set<String> SCHEMES = Set.of("http", "https");

	/**
	 * Read an address as people type it: without a scheme it is http, a path is dropped.
	 * @throws RuleViolationException {@code address-malformed}
	 */
	public static HouseAddress of(String typed) {
		String text = typed.strip();
		try {
			URI uri = new URI(text.contains("://") ? text : "http://" + text);
			if (uri.getHost() != null && SCHEMES.contains(uri.getScheme().toLowerCase(Locale.ROOT))) {
				return new HouseAddress(new URI(uri.getScheme().toLowerCase(Locale.ROOT), null, uri.getHost(),
						uri.getPort(), null, null, null)
					.toString());
			}
		}
		catch (URISyntaxException ex) {
			// The refusal below says what is expected.
		}
		throw new RuleViolationException("address-malformed", "address", Sentence.of("house.address-malformed", text));
	}

	/** Tell whether the address means the tablet itself as soon as a tablet opens it. */
	public boolean isLocal() {
		String host = URI.create(this.base).getHost();
		return host.equalsIgnoreCase("localhost") || host.matches("127(\\.\\d+){3}") || host.equals("[::1]");
	}

	/** The same house under another host. */
	public HouseAddress at(String host) {
		URI uri = URI.create(this.base);
		return new HouseAddress(uri.getScheme() + "://" + host + ((uri.getPort() >= 0) ? ":" + uri.getPort() : ""));
	}

	/** The same host at another port. */
	public HouseAddress at(int port) {
		URI uri = URI.create(this.base);
		return new HouseAddress(uri.getScheme() + "://" + uri.getHost() + ":" + port);
	}

	/** Tell whether only the hosts may differ. */
	boolean isLike(HouseAddress other) {
		return at(URI.create(other.base).getHost()).equals(other);
	}

	/**
	 * A commentator's personal link. The token stands behind the hash sign, which no
	 * browser sends: so it gets into no log and no referrer on its way.
	 */
	public String commentary(String token) {
		return this.base + "/commentary#" + token;
	}

	/** The link of a team's managers; its token stands behind the hash sign, too. */
	public String manager(String token) {
		return this.base + LinkCookie.OF_TEAM.path() + "#" + token;
	}

	/** The page that a tablet opens to take a seat. */
	public String join(String code) {
		return this.base + "/judge?code=" + code;
	}

}
