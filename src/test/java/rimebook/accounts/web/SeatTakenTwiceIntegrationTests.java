package rimebook.accounts.web;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatTakeovers;
import rimebook.shared.Actor;
import rimebook.testsupport.Races;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class SeatTakenTwiceIntegrationTests {

	private static final Actor REFEREE = new Actor("Runa Hale", "referee", "test");

	@Autowired
	private SeatCodes codes;

	@Autowired
	private SeatTakeovers takeovers;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	/** Keeps no cookies: the second tap is sent before the first is answered. */
	private final HttpClient tablet = HttpClient.newHttpClient();

	private UUID seat;

	private String code;

	@BeforeEach
	void aSeatHasACode() {
		this.seat = UUID.randomUUID();
		this.code = this.codes.issue(this.seat, "Judge 1, Junior", REFEREE);
	}

	@Test
	void aDoubleTapTakesTheSeatOnce() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			aSeatHasACode();
			HttpRequest form = form();
			List<HttpResponse<String>> answers = both(form);
			assertThat(answers).extracting((answer) -> answer.headers().firstValue("location").orElse(""))
				.allMatch((location) -> location.endsWith("/judge/card"));
			assertThat(tokens(answers, "rimebook-seat")).hasSize(2).allMatch((token) -> holds(token));
			assertThat(lines("seat.paired")).isOne();
			assertThat(lines("seat.asked-for")).isZero();
		}
	}

	@Test
	void aDoubleTapAtASeatThatIsAliveAsksTheRefereeOnce() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			aSeatHasACode();
			this.codes.pair(this.code, "the seat's own tablet", null);
			List<HttpResponse<String>> answers = both(form());
			List<String> tokens = tokens(answers, "rimebook-seat-asked");
			assertThat(tokens).hasSize(2)
				.allSatisfy((token) -> assertThat(this.takeovers.look(token)).isEqualTo(SeatTakeovers.Answer.WAITING));
			assertThat(lines("seat.asked-for")).isOne();
			this.takeovers.answer(this.seat, question(), true, REFEREE);
			assertThat(tokens).allMatch((token) -> holds(token));
		}
	}

	@Test
	void whoWasRefusedMayAskAgain() throws Exception {
		this.codes.pair(this.code, "the seat's own tablet", null);
		HttpRequest form = form();
		both(form);
		this.takeovers.answer(this.seat, question(), false, REFEREE);
		both(form);
		assertThat(lines("seat.asked-for")).isEqualTo(2);
	}

	@Test
	void anotherFormIsAnotherTablet() {
		assertThat(tokens(List.of(now(form())), "rimebook-seat")).hasSize(1);
		assertThat(tokens(List.of(now(form())), "rimebook-seat-asked")).as("the seat is alive").hasSize(1);
	}

	@Test
	void aProgramThatSendsItsRequestTwiceIsAnsweredAlike() throws Exception {
		HttpRequest pairing = pairing(", \"request\": \"" + UUID.randomUUID() + "\"");
		List<HttpResponse<String>> answers = both(pairing);
		assertThat(answers).extracting(HttpResponse::statusCode).containsOnly(200);
		assertThat(answers.get(0).body()).isEqualTo(answers.get(1).body());
		assertThat(lines("seat.paired")).isOne();
		assertThat(now(pairing("")).statusCode()).as("without a request it is another program").isEqualTo(202);
	}

	private boolean holds(String token) {
		return this.codes.grantOf(token).filter((grant) -> grant.seat().equals(this.seat)).isPresent();
	}

	private Instant question() {
		return this.takeovers.open()
			.stream()
			.filter((one) -> one.seat().equals(this.seat))
			.findFirst()
			.orElseThrow()
			.askedAt();
	}

	private int lines(String action) {
		return this.database.sql("select count(*) from record_line where action = ? and subject_id = ?")
			.params(action, this.seat.toString())
			.query(Integer.class)
			.single();
	}

	private static List<String> tokens(List<HttpResponse<String>> answers, String cookie) {
		return answers.stream()
			.flatMap((answer) -> answer.headers().allValues("set-cookie").stream())
			.filter((given) -> given.startsWith(cookie + "="))
			.map((given) -> given.substring(cookie.length() + 1, given.indexOf(';')))
			.toList();
	}

	private HttpRequest form() {
		HttpResponse<String> page = now(HttpRequest.newBuilder(at("/judge")).build());
		Element form = Jsoup.parse(page.body()).selectFirst("form[action=/judge]");
		String hidden = form.select("input[type=hidden]")
			.stream()
			.map((field) -> field.attr("name") + "=" + URLEncoder.encode(field.val(), StandardCharsets.UTF_8))
			.collect(Collectors.joining("&"));
		String cookies = page.headers()
			.allValues("set-cookie")
			.stream()
			.map((cookie) -> cookie.substring(0, cookie.indexOf(';')))
			.collect(Collectors.joining("; "));
		return HttpRequest.newBuilder(at("/judge"))
			.header("Cookie", cookies)
			.header("Content-Type", "application/x-www-form-urlencoded")
			.POST(BodyPublishers.ofString(hidden + "&code=" + this.code))
			.build();
	}

	private HttpRequest pairing(String more) {
		return HttpRequest.newBuilder(at("/api/seat-pairings"))
			.header("Content-Type", "application/json")
			.POST(BodyPublishers.ofString("{\"code\": \"" + this.code + "\"" + more + "}"))
			.build();
	}

	private List<HttpResponse<String>> both(HttpRequest request) throws Exception {
		return Races.both(() -> now(request), () -> now(request));
	}

	private HttpResponse<String> now(HttpRequest request) {
		return this.tablet.sendAsync(request, BodyHandlers.ofString()).join();
	}

	private URI at(String path) {
		return URI.create("http://localhost:" + this.port + path);
	}

}
