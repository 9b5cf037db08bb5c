package rimebook.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServer;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.support.StaticApplicationContext;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** The server with its door and nothing behind it but an echo. */
@Timeout(30)
class DoorTests {

	private static final String SEAT = "Bearer a-seat";

	private final List<Socket> sockets = new ArrayList<>();

	/** Who is to stay is answered when the test is over. */
	private final CountDownLatch end = new CountDownLatch(1);

	private final HttpClient http = HttpClient.newHttpClient();

	private final int crewPort = freePort();

	private final Drain drain = new Drain(Duration.ofMillis(300));

	private final DoorConfiguration.Door door = new DoorConfiguration.Door(
			new DoorSettings(this.crewPort, 400, 8, 8, 8, 16, 4, Duration.ofSeconds(2), List.of(), Duration.ZERO),
			(request) -> SEAT.equals(request.getHeader("Authorization")), () -> null, this.drain);

	private WebServer server;

	@BeforeEach
	void opens() {
		TomcatServletWebServerFactory factory = new TomcatServletWebServerFactory(0);
		this.door.customize(factory);
		this.server = factory
			.getWebServer((context) -> context.addServlet("echo", new Echo(this.end)).addMapping("/*"));
		this.server.start();
	}

	@AfterEach
	void closes() throws IOException {
		this.end.countDown();
		for (Socket socket : this.sockets) {
			socket.close();
		}
		this.door.close();
		this.server.stop();
	}

	/** More of them than the server has threads. */
	@Test
	void cardsAreAcknowledgedWhileManySendSlowly() throws Exception {
		for (int i = 0; i < 215; i++) {
			say("POST /api/cards/1 HTTP/1.1\r\nHost: h\r\nAuthorization: Bearer x\r\nContent-Length: 100\r\n\r\nhalf");
		}
		for (int i = 0; i < 5; i++) {
			assertThat(sendCard(this.server.getPort())).isEqualTo("5.6 and 4.8");
		}
	}

	/** What a proxy may repeat is sent to the other node, a form is still taken. */
	@Test
	void aNodeThatDrainsSendsOthersElsewhereAndLosesNoForm() throws Exception {
		this.drain.start();
		assertThat(get("/follow/cup").statusCode()).isEqualTo(200);
		this.drain.onApplicationEvent(new ContextClosedEvent(new StaticApplicationContext()));
		HttpResponse<String> page = get("/follow/cup");
		assertThat(page.statusCode()).isEqualTo(502);
		assertThat(page.headers().firstValue("Connection")).hasValue("close");
		assertThat(get("/actuator/health/readiness").statusCode()).isEqualTo(200);
		Socket card = say("PUT /api/cards/1 HTTP/1.1\r\nHost: h\r\nContent-Length: 4\r\n\r\nwhole");
		assertThat(firstLine(card)).startsWith("HTTP/1.1 502");
		Socket form = say("POST /desk/stand HTTP/1.1\r\nHost: h\r\nContent-Length: 5\r\n\r\nwhole");
		assertThat(upTo(form, "whole")).contains("HTTP/1.1 200", "Connection: close");
		long start = System.nanoTime();
		this.drain.stop();
		assertThat(System.nanoTime() - start).isGreaterThan(250_000_000L);
	}

	@Test
	void aNodeThatIsAloneEndsAtOnce() {
		Drain alone = new Drain(Duration.ZERO);
		alone.start();
		alone.onApplicationEvent(new ContextClosedEvent(new StaticApplicationContext()));
		assertThat(alone.isOn()).isFalse();
		alone.stop();
		assertThat(alone.isRunning()).isFalse();
	}

	@Test
	void aBodyThatDoesNotComeInTimeIsRefused() throws Exception {
		Socket slow = say("POST /sign-in HTTP/1.1\r\nHost: h\r\nContent-Length: 100\r\n\r\nhalf");
		assertThat(firstLine(slow)).startsWith("HTTP/1.1 408");
	}

	@Test
	void aBodyInPiecesArrivesWhole() throws Exception {
		Socket slow = say("PUT /api/cards/1 HTTP/1.1\r\nHost: h\r\nContent-Length: 10\r\nExpect: 100-continue\r\n\r\n");
		assertThat(firstLine(slow)).startsWith("HTTP/1.1 100");
		for (String piece : List.of("01234", "567", "89")) {
			// What is written at once arrives at once.
			TimeUnit.MILLISECONDS.sleep(50);
			slow.getOutputStream().write(piece.getBytes(StandardCharsets.US_ASCII));
		}
		assertThat(upTo(slow, "0123456789")).contains("HTTP/1.1 200");
	}

	@Test
	void aHeadThatDoesNotComeInTimeIsHungUpOn() throws Exception {
		Socket slow = say("GET / HTTP/1.1\r\nHost: h\r\n");
		await().until(() -> isHungUpOnWhenItSaysMore(slow));
	}

	private static boolean isHungUpOnWhenItSaysMore(Socket slow) {
		try {
			slow.getOutputStream().write("X-More: x\r\n".getBytes(StandardCharsets.US_ASCII));
			slow.setSoTimeout(100);
			return slow.getInputStream().read() == -1;
		}
		catch (SocketTimeoutException open) {
			return false;
		}
		catch (IOException hungUp) {
			return true;
		}
	}

	@Test
	void visitorsAndNewcomersDoNotTakeTheCrewsPlaces() throws Exception {
		for (int i = 0; i < 20; i++) {
			say("GET /follow/stay HTTP/1.1\r\nHost: h\r\n\r\n");
			say("GET /sign-in/stay HTTP/1.1\r\nHost: h\r\n\r\n");
		}
		expectNoPlace("/follow/cup");
		assertThat(get("/follow/cup").headers().firstValue("Retry-After")).isPresent();
		expectNoPlace("/record-seen");
		expectNoPlace("/sign-in");
		assertThat(sendCard(this.server.getPort())).isEqualTo("5.6 and 4.8");
	}

	/** Whose page is there gets its style sheet too. */
	@Test
	void filesHavePlacesOfTheirOwn() throws Exception {
		for (int i = 0; i < 20; i++) {
			say("GET /follow/stay HTTP/1.1\r\nHost: h\r\n\r\n");
		}
		expectNoPlace("/follow/cup");
		assertThat(get("/css/rimebook.css").statusCode()).isEqualTo(200);
		for (int i = 0; i < 20; i++) {
			say("GET /css/stay HTTP/1.1\r\nHost: h\r\n\r\n");
		}
		expectNoPlace("/css/rimebook.css");
		assertThat(sendCard(this.server.getPort())).isEqualTo("5.6 and 4.8");
	}

	/** Names of cookies are public; what the service signed is not. */
	@Test
	void whatAStrangerMakesUpTakesNoPlaceOfTheCrew() throws Exception {
		for (int i = 0; i < 20; i++) {
			say("GET /desk/stay HTTP/1.1\r\nHost: h\r\nCookie: rimebook=1; rimebook-seat=2; rimebook-crew=3.4\r\n\r\n");
			say("GET /api/judge/stay HTTP/1.1\r\nHost: h\r\nAuthorization: Bearer made.up\r\n\r\n");
			say("PUT /api/cards/1/stay HTTP/1.1\r\nHost: h\r\nTransfer-Encoding: chunked\r\n\r\n");
		}
		expectNoPlace("/desk");
		assertThat(sendCard(this.server.getPort())).isEqualTo("5.6 and 4.8");
	}

	@Test
	void silentConnectionsMakeRoom() throws Exception {
		for (int i = 0; i < 450; i++) {
			this.sockets.add(new Socket("127.0.0.1", this.server.getPort()));
		}
		assertThat(sendCard(this.server.getPort())).isEqualTo("5.6 and 4.8");
	}

	@Test
	void crewPortHasPlacesOfItsOwn() throws Exception {
		for (int i = 0; i < 450; i++) {
			say("GET /follow/stay HTTP/1.1\r\nHost: h\r\n\r\n");
		}
		assertThat(sendCard(this.crewPort)).isEqualTo("5.6 and 4.8");
	}

	@Test
	void aFormForStrangersIsSmall() throws Exception {
		Socket large = say("POST /sign-in HTTP/1.1\r\nHost: h\r\nContent-Length: 60000\r\n\r\nsignInName=aaaa");
		assertThat(firstLine(large)).startsWith("HTTP/1.1 413");
	}

	@Test
	void connectionsHaveRoomInHeapAndOpenFiles() {
		assertThat(DoorSettings.connectionsIn(512L << 20, 1 << 20)).isEqualTo(10_922);
		assertThat(DoorSettings.connectionsIn(512L << 20, 1024)).isEqualTo(768);
	}

	/** What was said before may still be on its way. */
	private void expectNoPlace(String path) {
		await().until(() -> get(path).statusCode() == 503);
	}

	private Socket say(String text) throws IOException {
		Socket socket = new Socket("127.0.0.1", this.server.getPort());
		this.sockets.add(socket);
		socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
		return socket;
	}

	private static String firstLine(Socket socket) throws IOException {
		return upTo(socket, "\r\n");
	}

	private static String upTo(Socket socket, String end) throws IOException {
		StringBuilder text = new StringBuilder();
		InputStream in = socket.getInputStream();
		for (int next = in.read(); next >= 0; next = in.read()) {
			text.append((char) next);
			if (text.toString().endsWith(end)) {
				return text.toString();
			}
		}
		return text.toString();
	}

	private String sendCard(int port) throws Exception {
		return this.http
			.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/cards/1"))
				.header("Authorization", SEAT)
				.timeout(Duration.ofSeconds(5))
				.PUT(HttpRequest.BodyPublishers.ofString("5.6 and 4.8"))
				.build(), HttpResponse.BodyHandlers.ofString())
			.body();
	}

	private HttpResponse<String> get(String path) throws Exception {
		return this.http.send(
				HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + this.server.getPort() + path)).build(),
				HttpResponse.BodyHandlers.ofString());
	}

	private static int freePort() {
		try (ServerSocket socket = new ServerSocket(0)) {
			return socket.getLocalPort();
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private static final class Echo extends HttpServlet {

		private static final long serialVersionUID = 1L;

		private final transient CountDownLatch end;

		private Echo(CountDownLatch end) {
			this.end = end;
		}

		private void awaitTheEnd() {
			try {
				this.end.await();
			}
			catch (InterruptedException ex) {
				Thread.currentThread().interrupt();
			}
		}

		@Override
		protected void service(HttpServletRequest request, HttpServletResponse response) throws IOException {
			if (request.getRequestURI().endsWith("/stay")) {
				awaitTheEnd();
			}
			request.getInputStream().transferTo(response.getOutputStream());
		}

	}

}
