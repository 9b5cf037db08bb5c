package rimebook.web;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;

import com.sun.management.UnixOperatingSystemMXBean;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How many are let in at once, and how long the door waits for them. The crew is not
 * counted: what is left is theirs.
 *
 * @param crewPort a second port with connections and threads of its own, to be kept
 * within the crew's network; 0 for none
 * @param connections how many connections may be open on the first port; left out (0), as
 * many as heap and operating system have room for
 * @param visitors how many requests for public addresses are answered at once
 * @param files the same for style sheets, scripts and pictures, of which a page asks for
 * many at once
 * @param newcomers how many requests are answered at once of those who show no sign of
 * belonging to the crew, such as people who are about to sign in
 * @param bodies how many bodies may be on their way at once
 * @param queries how many connections to the database visitors and newcomers may hold at
 * once; the pool has {@code spring.datasource.hikari.maximum-pool-size}
 * @param patience within which time the head and a small body of a request must be here
 * @param proxies the addresses of reverse proxies in front of the service; what they say
 * of where a request comes from is believed, what anybody else says is not
 * @param drain how long a stopping node sends whoever comes to the other one before it
 * ends; 0 where there is no other
 */
@ConfigurationProperties("rimebook.door")
record DoorSettings(@DefaultValue("0") int crewPort, @DefaultValue("0") int connections,
		@DefaultValue("64") int visitors, @DefaultValue("64") int files, @DefaultValue("32") int newcomers,
		@DefaultValue("64") int bodies, @DefaultValue("8") int queries, @DefaultValue("10s") Duration patience,
		@DefaultValue List<String> proxies, @DefaultValue("0s") Duration drain) {

	/** What a silent connection takes, with room to spare. */
	private static final long CONNECTION_BYTES = 48 * 1024;

	DoorSettings {
		proxies = List.copyOf(proxies);
		connections = (connections > 0) ? connections : connectionsIn(Runtime.getRuntime().maxMemory(), openFiles());
	}

	/** How many connections a heap has room for, and three quarters of the open files. */
	static int connectionsIn(long heap, long openFiles) {
		return (int) Math.max(100, Math.min(100_000, Math.min(heap / CONNECTION_BYTES, openFiles / 4 * 3)));
	}

	private static long openFiles() {
		return (ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix)
				? unix.getMaxFileDescriptorCount() : Long.MAX_VALUE;
	}

}
