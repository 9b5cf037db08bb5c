package rimebook.web;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;

import jakarta.servlet.http.HttpServletRequest;

/**
 * Where a request comes from, as far as it is counted together. An IPv6 device chooses
 * its address anew as often as it likes, within the 64 bits that its network leaves it
 * (RFC 8981), so there the network is what counts.
 */
final class Network {

	private static final int PREFIX_BYTES = 8;

	private Network() {
	}

	/** The address, or for IPv6 its network: {@code 2001:db8:0:1:0:0:0:0/64}. */
	static String of(HttpServletRequest request) {
		return of(request.getRemoteAddr());
	}

	static String of(String address) {
		if (!address.contains(":")) {
			return address;
		}
		try {
			return (InetAddress.getByName(address) instanceof Inet6Address long6) ? prefix(long6)
					: InetAddress.getByName(address).getHostAddress();
		}
		catch (UnknownHostException ex) {
			return address;
		}
	}

	private static String prefix(Inet6Address address) throws UnknownHostException {
		byte[] bytes = address.getAddress();
		if (address.isLoopbackAddress()) {
			return address.getHostAddress();
		}
		Arrays.fill(bytes, PREFIX_BYTES, bytes.length, (byte) 0);
		return InetAddress.getByAddress(bytes).getHostAddress() + "/64";
	}

}
