package rimebook.live;

/** Addresses that are counted as one: what one household or hall is usually given. */
final class AddressGroup {

	private static final int NETWORK_PARTS = 4;

	private AddressGroup() {
	}

	/** An IPv4 address is itself, an IPv6 address its network of 64 bits. */
	static String of(String address) {
		if (address.indexOf(':') < 0) {
			return address;
		}
		String[] halves = address.replaceFirst("%.*", "").split("::", 2);
		String[] head = halves[0].isEmpty() ? new String[0] : halves[0].split(":");
		StringBuilder group = new StringBuilder();
		for (int i = 0; i < NETWORK_PARTS; i++) {
			group.append((i < head.length) ? head[i] : "0").append(':');
		}
		return group.append(":/64").toString();
	}

}
