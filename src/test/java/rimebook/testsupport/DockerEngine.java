package rimebook.testsupport;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The places where a Docker engine may listen. Testcontainers finds an engine too, but
 * where there is none it takes its time and prints a stack trace for each place it tried.
 */
final class DockerEngine {

	private static final int PATIENCE_MILLIS = 1000;

	private final List<URI> addresses;

	DockerEngine(List<URI> addresses) {
		this.addresses = addresses;
	}

	static DockerEngine ofThisMachine() {
		return of(System.getenv(), System.getProperty("user.home"));
	}

	static DockerEngine of(Map<String, String> environment, String home) {
		String configured = environment.get("DOCKER_HOST");
		if (configured != null && !configured.isBlank()) {
			return new DockerEngine(List.of(URI.create(configured)));
		}
		String runtime = environment.getOrDefault("XDG_RUNTIME_DIR", home + "/.docker/run");
		return new DockerEngine(Stream
			.of("/var/run/docker.sock", runtime + "/docker.sock", home + "/.docker/run/docker.sock",
					home + "/.docker/desktop/docker.sock")
			.distinct()
			.map((path) -> URI.create("unix://" + path))
			.toList());
	}

	boolean answers() {
		return this.addresses.stream().anyMatch(DockerEngine::answers);
	}

	private static boolean answers(URI address) {
		try {
			return "unix".equals(address.getScheme()) ? connectsToFile(address) : connectsToPort(address);
		}
		catch (IOException | IllegalArgumentException | UnsupportedOperationException ex) {
			return false;
		}
	}

	private static boolean connectsToFile(URI address) throws IOException {
		try (SocketChannel channel = SocketChannel.open(UnixDomainSocketAddress.of(address.getPath()))) {
			return channel.isConnected();
		}
	}

	private static boolean connectsToPort(URI address) throws IOException {
		try (Socket socket = new Socket()) {
			socket.connect(new InetSocketAddress(address.getHost(), address.getPort()), PATIENCE_MILLIS);
			return true;
		}
	}

	@Override
	public String toString() {
		return this.addresses.stream().map(URI::toString).collect(Collectors.joining(" or "));
	}

}
