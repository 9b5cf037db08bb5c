package rimebook.web;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.List;

import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServer;
import org.springframework.mock.env.MockEnvironment;

import rimebook.accounts.CrewSigns;
import rimebook.pages.DoorAnswers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

/** A real connector, spoken to by sockets, that answers what it believes. */
@Timeout(30)
class ProxiesTests {

	private static final String FORGED = "X-Forwarded-For: 198.51.100.7\r\nX-Forwarded-Proto: https\r\n"
			+ "X-Forwarded-Host: attacker.example\r\nX-Forwarded-Port: 99\r\nForwarded: for=198.51.100.7\r\n";

	private static final String UNTOUCHED = "127.0.0.1 http rink.example";

	@Test
	void withoutAProxyNobodyIsBelieved() throws IOException {
		assertThat(believed(List.of(), FORGED)).isEqualTo(UNTOUCHED);
	}

	/** A rink's network is private, and so is everybody in it. */
	@Test
	void whoeverIsNotTheProxyIsNotBelievedEvenFromAPrivateNetwork() throws IOException {
		assertThat(believed(List.of("127.0.0.2", "10.0.0.1", "::1"), FORGED)).isEqualTo(UNTOUCHED);
	}

	@Test
	void aDotIsADot() throws IOException {
		assertThat(believed(List.of("127.0.0.11", "27.0.0.1"), FORGED)).isEqualTo(UNTOUCHED);
	}

	@Test
	void theProxyIsBelievedButForTheHost() throws IOException {
		assertThat(believed(List.of("127.0.0.1"), FORGED)).isEqualTo("198.51.100.7 https rink.example");
	}

	/** The proxy writes the last address; those before it are what the visitor claims. */
	@Test
	void onlyWhatTheProxyItselfAddedCounts() throws IOException {
		assertThat(believed(List.of("127.0.0.1", "10.0.0.1"),
				"X-Forwarded-For: 203.0.113.9, 198.51.100.7, 10.0.0.1\r\nX-Forwarded-Proto: http\r\n"))
			.isEqualTo("198.51.100.7 http rink.example");
	}

	@ParameterizedTest
	@ValueSource(strings = { "10.0.0.0/8", "proxy.example", "10\\..*", "" })
	void onlyExactAddressesAreTaken(String proxy) {
		assertThatIllegalArgumentException().isThrownBy(() -> TrustedProxies.valve(List.of(proxy)))
			.withMessageContaining("rimebook.door.proxies");
	}

	@ParameterizedTest
	@ValueSource(strings = { "native", "framework", "NATIVE" })
	void theServiceDoesNotStartWithWhatBelievesEverybody(String strategy) {
		MockEnvironment environment = new MockEnvironment().withProperty("server.forward-headers-strategy", strategy);
		StaticListableBeanFactory beans = new StaticListableBeanFactory();
		CrewCookie crew = new CrewCookie(beans.getBeanProvider(CrewSigns.class), Clock.systemUTC());
		assertThatIllegalStateException()
			.isThrownBy(() -> new DoorConfiguration().door(settings(List.of()), crew,
					beans.getBeanProvider(DoorAnswers.class), new Drain(Duration.ZERO), environment))
			.withMessageContaining("rimebook.door.proxies");
	}

	private static DoorSettings settings(List<String> proxies) {
		return new DoorSettings(0, 400, 8, 8, 8, 16, 4, Duration.ofSeconds(2), proxies, Duration.ZERO);
	}

	private static String believed(List<String> proxies, String headers) throws IOException {
		TomcatServletWebServerFactory factory = new TomcatServletWebServerFactory(0);
		try (DoorConfiguration.Door door = new DoorConfiguration.Door(settings(proxies), (request) -> false, () -> null,
				new Drain(Duration.ZERO))) {
			door.customize(factory);
			WebServer server = factory
				.getWebServer((context) -> context.addServlet("belief", new Belief()).addMapping("/*"));
			server.start();
			try (Socket socket = new Socket("127.0.0.1", server.getPort())) {
				socket.getOutputStream()
					.write(("GET / HTTP/1.0\r\nHost: rink.example\r\n" + headers + "\r\n")
						.getBytes(StandardCharsets.US_ASCII));
				String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
				return answer.substring(answer.indexOf("\r\n\r\n") + 4);
			}
			finally {
				server.stop();
			}
		}
	}

	private static final class Belief extends HttpServlet {

		private static final long serialVersionUID = 1L;

		@Override
		protected void doGet(HttpServletRequest request, HttpServletResponse response) throws IOException {
			response.getWriter()
				.print(request.getRemoteAddr() + " " + request.getScheme() + " " + request.getServerName());
		}

	}

}
