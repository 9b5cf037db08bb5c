package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.env.MockEnvironment;

import rimebook.pages.HouseAddress;
import rimebook.pages.HouseAddresses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

class RehearsalStartTests {

	private final MockEnvironment environment = new MockEnvironment();

	private final HouseAddresses house = mock(HouseAddresses.class);

	private final RehearsalStart start = new RehearsalStart(new RehearsalSettings(0, Duration.ofHours(12), 256),
			this.environment, this.house);

	@Test
	void aServiceWithoutTlsOrNameGivesNothing() {
		assertThat(this.start.given(8090)).isEmpty();
	}

	@Test
	void theCertificateIsFoundFromElsewhere(@TempDir Path folder) throws IOException {
		Path store = Files.createFile(folder.resolve("rimebook.p12"));
		Path beside = Path.of("").toAbsolutePath().relativize(store);
		this.environment.withProperty("server.ssl.key-store", "file:" + beside)
			.withProperty("server.ssl.key-store-password", beside.toString())
			.withProperty("spring.ssl.bundle.pem.rink.keystore.certificate", beside.toString())
			.withProperty("spring.ssl.bundle.pem.rink.keystore.private-key", "classpath:key.pem")
			.withProperty("server.port", "8443");
		assertThat(this.start.given(8090)).isEqualTo(Map.of("server.ssl.key-store", "file:" + absolute(beside),
				"server.ssl.key-store-password", beside.toString(), "spring.ssl.bundle.pem.rink.keystore.certificate",
				"file:" + absolute(beside), "spring.ssl.bundle.pem.rink.keystore.private-key", "classpath:key.pem"));
	}

	private static Path absolute(Path file) {
		return file.toAbsolutePath();
	}

	@Test
	void tabletsFindItByTheNameOfTheHouse() {
		this.environment.withProperty("rimebook.slips.address", "https://rink.example:8443");
		given(this.house.beside(8453)).willReturn(HouseAddress.of("https://rink.example:8453"));
		assertThat(this.start.given(8453)).isEqualTo(Map.of("rimebook.slips.address", "https://rink.example:8453"));
	}

}
