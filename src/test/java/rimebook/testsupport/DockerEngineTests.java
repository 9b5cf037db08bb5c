package rimebook.testsupport;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.StandardProtocolFamily;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

class DockerEngineTests {

	@Test
	void answersWhereSomethingListensOnTheFile(@TempDir Path directory) throws IOException {
		Path file = directory.resolve("docker.sock");
		try (ServerSocketChannel channel = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
			channel.bind(UnixDomainSocketAddress.of(file));
			assertThat(at("unix://" + file).answers()).isTrue();
		}
		assertThat(file).as("the file that a dead engine leaves behind").exists();
		assertThat(at("unix://" + file).answers()).isFalse();
	}

	@Test
	void answersWhereSomethingListensOnThePort() throws IOException {
		URI address;
		try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
			address = URI.create("tcp://localhost:" + server.getLocalPort());
			assertThat(new DockerEngine(List.of(address)).answers()).isTrue();
		}
		assertThat(new DockerEngine(List.of(address)).answers()).isFalse();
	}

	@Test
	void isFoundMissingAtOnce(@TempDir Path directory) {
		DockerEngine engine = at("unix://" + directory.resolve("none.sock"));
		assertTimeout(Duration.ofMillis(500), () -> assertThat(engine.answers()).isFalse());
	}

	@Test
	void isMissingWhereTheAddressMakesNoSense() {
		assertThat(at("tcp://localhost:99999").answers()).isFalse();
		assertThat(at("npipe:////./pipe/docker_engine").answers()).isFalse();
	}

	@Test
	void isLookedForOnlyWhereTheEnvironmentSays() {
		DockerEngine engine = DockerEngine.of(Map.of("DOCKER_HOST", "tcp://localhost:2375"), "/home/someone");
		assertThat(engine).hasToString("tcp://localhost:2375");
	}

	@Test
	void isLookedForInTheUsualPlacesOtherwise() {
		DockerEngine engine = DockerEngine.of(Map.of("XDG_RUNTIME_DIR", "/run/user/7"), "/home/someone");
		assertThat(engine.toString()).contains("/var/run/docker.sock", "/run/user/7/docker.sock",
				"/home/someone/.docker/run/docker.sock");
	}

	private static DockerEngine at(String address) {
		return new DockerEngine(List.of(URI.create(address)));
	}

}
