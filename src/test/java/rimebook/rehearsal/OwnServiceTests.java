package rimebook.rehearsal;

import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;

import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** A service with the certificate of a rink, made as README says. */
class OwnServiceTests {

	private static final char[] PASSWORD = "drift of dry snow".toCharArray();

	@TempDir
	private Path folder;

	@Test
	void aSimulatedTabletSpeaksToItsServiceWhateverNameTheCertificateHas() throws Exception {
		HttpsServer service = service();
		try {
			HttpRequest card = HttpRequest.newBuilder(URI.create("https://localhost:" + service.getAddress().getPort()))
				.build();
			assertThatExceptionOfType(SSLException.class)
				.isThrownBy(() -> HttpClient.newHttpClient().send(card, HttpResponse.BodyHandlers.discarding()));
			assertThat(OwnService.client().send(card, HttpResponse.BodyHandlers.discarding()).statusCode())
				.isEqualTo(204);
		}
		finally {
			service.stop(0);
		}
	}

	/** Nothing that takes any certificate may ever ask another machine. */
	@Test
	void anyOtherNameThanThatOfTheMachineForItselfIsRefused() throws Exception {
		HttpsServer service = service();
		try {
			HttpRequest card = HttpRequest.newBuilder(URI.create("https://127.0.0.1:" + service.getAddress().getPort()))
				.build();
			assertThatExceptionOfType(SSLException.class)
				.isThrownBy(() -> OwnService.client().send(card, HttpResponse.BodyHandlers.discarding()))
				.withMessageContaining("Nobody but this machine is asked here");
		}
		finally {
			service.stop(0);
		}
	}

	private HttpsServer service() throws Exception {
		HttpsServer service = HttpsServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
		service.setHttpsConfigurator(new HttpsConfigurator(tls()));
		service.createContext("/", (exchange) -> {
			exchange.sendResponseHeaders(204, -1);
			exchange.close();
		});
		service.start();
		return service;
	}

	private SSLContext tls() throws Exception {
		KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
		keys.init(store(), PASSWORD);
		SSLContext context = SSLContext.getInstance("TLS");
		context.init(keys.getKeyManagers(), null, null);
		return context;
	}

	private KeyStore store() throws Exception {
		Path file = this.folder.resolve("rink.p12");
		Process keytool = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
				"-genkeypair", "-alias", "rink", "-keyalg", "EC", "-dname", "CN=rink.example", "-keystore",
				file.toString(), "-storepass", new String(PASSWORD))
			.redirectErrorStream(true)
			.start();
		assertThat(new String(keytool.getInputStream().readAllBytes())).as("keytool").doesNotContain("error");
		return read(file);
	}

	private static KeyStore read(Path file) throws Exception {
		KeyStore store = KeyStore.getInstance("PKCS12");
		try (InputStream in = Files.newInputStream(file)) {
			store.load(in, PASSWORD);
		}
		return store;
	}

}
