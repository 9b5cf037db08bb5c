package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What is kept is answered by the server's own thread, before its protocol. Whoever asks
 * cannot tell.
 */
@LiveTest
class KeptAtTheDoorIntegrationTests {

	private static final String FREE = "/follow/fjord-days/junior/free-skating";

	/** Sends a request the usual way through the server, to what is kept. */
	private static final String USUAL = "TE: trailers\r\n";

	@Autowired
	private Visitor visitor;

	@Autowired
	private RenditionCache renditions;

	private final Stage stage = new Stage();

	@BeforeEach
	void afterNineTeams() {
		IntStream.range(0, 9).forEach((i) -> this.stage.free().skate());
		this.visitor.watch(this.stage);
	}

	@Test
	void headersAreThoseOfADrawnPage() {
		for (String path : List.of(FREE, FREE + "?part=live", "/", "/api/public/competitions/fjord-days")) {
			Answered drawn = ask("GET " + path, "Accept-Encoding: gzip\r\n");
			Answered usual = ask("GET " + path, "Accept-Encoding: gzip\r\n" + USUAL);
			Answered kept = ask("GET " + path, "Accept-Encoding: gzip\r\n");
			assertThat(drawn.status()).isEqualTo("HTTP/1.1 200 ");
			assertThat(kept.status()).isEqualTo(drawn.status());
			assertThat(usual.headers()).as(path).isEqualTo(drawn.headers());
			assertThat(kept.headers()).as(path).isEqualTo(drawn.headers());
			assertThat(kept.body()).as(path).isEqualTo(drawn.body()).isNotEmpty();
		}
	}

	@Test
	void headHasNoBodyAndWhatIsKnownHasNone() {
		Answered drawn = ask("GET " + FREE, "");
		Answered head = ask("HEAD " + FREE, "");
		assertThat(head.headers()).isEqualTo(drawn.headers());
		assertThat(head.body()).isEmpty();
		String tag = drawn.header("ETag");
		Answered known = ask("GET " + FREE, "If-None-Match: \"other\", " + tag + "\r\n");
		Answered usual = ask("GET " + FREE, "If-None-Match: " + tag + "\r\n" + USUAL);
		assertThat(known.status()).isEqualTo("HTTP/1.1 304 ");
		assertThat(known.headers()).isEqualTo(usual.headers());
		assertThat(known.body()).isEmpty();
		assertThat(ask("GET " + FREE, "If-None-Match: \"other\"\r\n").body()).isEqualTo(drawn.body());
	}

	@Test
	void eachLanguageAndCompressionIsItsOwn() {
		for (int round = 0; round < 2; round++) {
			assertThat(text(ask("GET " + FREE, "Accept-Language: fi-FI,fi;q=0.9\r\n"))).contains("lang=\"fi\"");
			assertThat(text(ask("GET " + FREE + "?lang=fr", "Accept-Language: fi\r\n"))).contains("lang=\"fr\"");
			assertThat(text(ask("GET " + FREE, ""))).contains("lang=\"en\"");
			assertThat(ask("GET " + FREE, "Accept-Encoding: gzip\r\n").header("Content-Encoding")).isEqualTo("gzip");
			assertThat(text(ask("GET " + FREE, "Accept-Encoding: gzip;q=0\r\n"))).contains("lang=\"en\"");
		}
	}

	@Test
	void pollIsPacedAndHangsUp() {
		String moments = "GET /follow/fjord-days/moments";
		ask(moments, "");
		Answered kept = ask(moments, "");
		Answered usual = ask(moments, USUAL);
		assertThat(kept.headers()).isEqualTo(usual.headers()).contains("Rink-Wait: 1", "Connection: close");
		assertThat(kept.body()).isEqualTo(usual.body());
	}

	@Test
	void newsIsNeverKeptBack() {
		ask("GET " + FREE, "");
		assertThat(text(ask("GET " + FREE, ""))).contains("Version 9");
		this.visitor.publish(this.stage.free().skate().scopeId(), 10);
		assertThat(text(ask("GET " + FREE, ""))).contains("Version 10");
	}

	@Test
	void oneConnectionCarriesManyAndEndsWhenAsked() throws IOException {
		ask("GET " + FREE, "");
		try (Socket socket = connected()) {
			for (int i = 0; i < 300; i++) {
				write(socket, "GET " + FREE + " HTTP/1.1\r\nHost: localhost\r\n\r\n");
				assertThat(readOne(socket.getInputStream()).status()).isEqualTo("HTTP/1.1 200 ");
			}
			write(socket, "GET /sign-in HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
			assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
				.startsWith("HTTP/1.1 200 ");
		}
	}

	/** The second of two at once, and a head in pieces, is read by the server itself. */
	@Test
	void twoAtOnceAndPiecesAreAnsweredToo() throws Exception {
		String one = "GET " + FREE + " HTTP/1.1\r\nHost: localhost\r\n\r\n";
		Answered whole = ask("GET " + FREE, "");
		try (Socket socket = connected()) {
			write(socket, one + one);
			assertThat(readOne(socket.getInputStream()).body()).isEqualTo(whole.body());
			assertThat(readOne(socket.getInputStream()).body()).isEqualTo(whole.body());
			write(socket, one.substring(0, 20));
			TimeUnit.MILLISECONDS.sleep(100);
			write(socket, one.substring(20));
			assertThat(readOne(socket.getInputStream()).body()).isEqualTo(whole.body());
		}
	}

	/** However slowly somebody reads: all comes, in order, and the others do not wait. */
	@Test
	void slowReaderGetsAllAndKeepsNobodyWaiting() throws Exception {
		byte[] body = ask("GET " + FREE, "").body();
		String one = "GET " + FREE + " HTTP/1.1\r\nHost: localhost\r\n\r\n";
		try (Socket slow = new Socket()) {
			slow.setReceiveBufferSize(2048);
			slow.connect(new InetSocketAddress("localhost", this.visitor.port()));
			slow.setSoTimeout(20_000);
			int asked = 0;
			// One after the other, each answered at the door, until nothing more is
			// taken.
			for (; asked < 90; asked++) {
				write(slow, one);
				TimeUnit.MILLISECONDS.sleep(2);
			}
			assertThat(ask("GET " + FREE, "").body()).isEqualTo(body);
			for (int i = 0; i < asked; i++) {
				assertThat(readOne(slow.getInputStream()).body()).isEqualTo(body);
			}
		}
	}

	private static String text(Answered answered) {
		return new String(answered.body(), StandardCharsets.UTF_8);
	}

	private Answered ask(String what, String headers) {
		try (Socket socket = connected()) {
			write(socket, what + " HTTP/1.1\r\nHost: localhost\r\n" + headers + "\r\n");
			return what.startsWith("HEAD") ? readHead(socket.getInputStream()) : readOne(socket.getInputStream());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private Socket connected() throws IOException {
		Socket socket = new Socket("localhost", this.visitor.port());
		socket.setSoTimeout(10_000);
		return socket;
	}

	private static void write(Socket socket, String text) throws IOException {
		socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
	}

	private static Answered readOne(InputStream in) throws IOException {
		Answered head = readHead(in);
		boolean none = head.status().contains(" 304 ");
		return new Answered(head.status(), head.headers(),
				none ? new byte[0] : in.readNBytes(Integer.parseInt(head.header("Content-Length"))));
	}

	private static Answered readHead(InputStream in) throws IOException {
		ByteArrayOutputStream head = new ByteArrayOutputStream();
		while (!head.toString(StandardCharsets.ISO_8859_1).endsWith("\r\n\r\n")) {
			int next = in.read();
			assertThat(next).as("the answer ended in its head").isNotNegative();
			head.write(next);
		}
		List<String> lines = head.toString(StandardCharsets.ISO_8859_1).lines().toList();
		return new Answered(lines.get(0),
				lines.stream()
					.skip(1)
					.filter((line) -> !line.isEmpty() && !line.startsWith("Date: "))
					.collect(Collectors.toSet()),
				new byte[0]);
	}

	private record Answered(String status, Set<String> headers, byte[] body) {

		String header(String name) {
			return this.headers.stream()
				.filter((line) -> line.startsWith(name + ": "))
				.map((line) -> line.substring(name.length() + 2))
				.findFirst()
				.orElse("");
		}

	}

}
