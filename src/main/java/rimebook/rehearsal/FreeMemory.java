package rimebook.rehearsal;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How much memory this machine has left for another program. */
final class FreeMemory {

	private static final Path LINUX = Path.of("/proc/meminfo");

	private static final Pattern AVAILABLE = Pattern.compile("(?m)^MemAvailable:\\s+(\\d+) kB$");

	private static final int KILO = 1024;

	private FreeMemory() {
	}

	/**
	 * In whole MiB: what the system would give without swapping, where it says so, else
	 * what nothing uses; the most there is where it says nothing.
	 */
	static long megabytes() {
		try {
			Matcher available = AVAILABLE.matcher(Files.isReadable(LINUX) ? Files.readString(LINUX) : "");
			if (available.find()) {
				return Long.parseLong(available.group(1)) / KILO;
			}
		}
		catch (IOException ex) {
			// Then the other way.
		}
		return (ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean system)
				? system.getFreeMemorySize() / KILO / KILO : Long.MAX_VALUE;
	}

}
