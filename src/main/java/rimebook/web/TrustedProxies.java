package rimebook.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.apache.catalina.valves.RemoteIpValve;
import org.jspecify.annotations.Nullable;

/**
 * Believes what a request says of where it comes from ({@code X-Forwarded-For}, {@code
 * X-Forwarded-Proto}) only where the connection comes from one of these very addresses.
 * The server's own default trusts every private network, and in a rink everybody is in
 * one. A forwarded host is believed from nobody: no page needs it.
 */
final class TrustedProxies {

	private static final Pattern LITERAL = Pattern.compile("\\d+(\\.\\d+){3}|[0-9a-fA-F:.]*:[0-9a-fA-F:.]*");

	private TrustedProxies() {
	}

	/** What sees to it, or nothing where no proxy is trusted. */
	static @Nullable RemoteIpValve valve(List<String> proxies) {
		if (proxies.isEmpty()) {
			return null;
		}
		RemoteIpValve valve = new RemoteIpValve();
		valve.setInternalProxies(proxies.stream().map(TrustedProxies::exactly).collect(Collectors.joining("|")));
		valve.setProtocolHeader("X-Forwarded-Proto");
		valve.setHostHeader(null);
		valve.setPortHeader(null);
		return valve;
	}

	/** As the server writes the address of a connection. */
	private static String exactly(String proxy) {
		if (!LITERAL.matcher(proxy).matches()) {
			throw new IllegalArgumentException("rimebook.door.proxies has '" + proxy
					+ "'; it takes exact addresses such as 172.28.0.2, neither names nor networks.");
		}
		try {
			return Pattern.quote(InetAddress.getByName(proxy).getHostAddress());
		}
		catch (UnknownHostException ex) {
			throw new IllegalArgumentException("rimebook.door.proxies has '" + proxy + "', which is no address.", ex);
		}
	}

}
