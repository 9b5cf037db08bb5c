package rimebook.pages;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;

import org.springframework.stereotype.Component;

/**
 * The addresses under which other devices of the rink's network may reach this machine.
 */
@Component
class LanAddresses {

	List<String> all() {
		try {
			return NetworkInterface.networkInterfaces()
				.filter(LanAddresses::isUp)
				.flatMap(NetworkInterface::inetAddresses)
				.filter(Inet4Address.class::isInstance)
				.filter((address) -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
				.map(InetAddress::getHostAddress)
				.sorted()
				.toList();
		}
		catch (SocketException ex) {
			return List.of();
		}
	}

	private static boolean isUp(NetworkInterface network) {
		try {
			return network.isUp();
		}
		catch (SocketException ex) {
			return false;
		}
	}

}
