package rimebook.rehearsal;

import java.io.IOException;
import java.net.ServerSocket;
import java.time.Duration;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How rehearsals are held.
 *
 * @param port where one answers, or the next port that is free; 0 for the real service's
 * and ten
 * @param longest after which one is ended and deleted
 * @param heap megabytes that one may take
 */
@ConfigurationProperties("rimebook.rehearsal")
record RehearsalSettings(@DefaultValue("0") int port, @DefaultValue("12h") Duration longest,
		@DefaultValue("256") int heap) {

	/** A Java machine takes about as much again beside its heap. */
	private static final int BESIDE_HEAP = 224;

	private static final int APART = 10;

	private static final int TRIES = 20;

	/** Megabytes that must be there before one is begun. */
	int needed() {
		return this.heap + BESIDE_HEAP;
	}

	/**
	 * A port that is free now.
	 * @param real the real service's
	 */
	int freePort(int real) throws IOException {
		int first = (this.port > 0) ? this.port : real + APART;
		for (int tried = first; tried < first + TRIES; tried++) {
			if (isFree(tried)) {
				return tried;
			}
		}
		throw new IOException("No port from " + first + " to " + (first + TRIES - 1) + " is free");
	}

	private static boolean isFree(int port) {
		try (ServerSocket socket = new ServerSocket(port)) {
			return socket.getLocalPort() == port;
		}
		catch (IOException ex) {
			return false;
		}
	}

}
