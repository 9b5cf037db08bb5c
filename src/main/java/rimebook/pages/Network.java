package rimebook.pages;

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
public final class Network {

	private static final int PREFIX_BYTES = 8;

	private Network() {
	}

	/** The address, or for IPv6 its network: {@code 2001:db8:0:1:0:0:0:0/64}. */
	public static String of(HttpServletRequest request) {
		return of(request.getRemoteAddr());
	}

	/** The same for an address as it is written. */
	public static String of(String address) {
		if (!address.contains(":")) {
			return address;
		}
		try {
			InetAddress read = InetAddress.getByName(address.replaceFirst("%.*", ""));
			return (read instanceof Inet6Address long6) ? prefix(long6) : read.getHostAddress();
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
