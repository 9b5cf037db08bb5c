package rimebook.web;

import java.io.IOException;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;

import rimebook.accounts.CodeGuessing;
import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.Role;
import rimebook.shared.Actor;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Requests byte by byte as no browser sends them: whichever way a path is written, what
 * is routed alike is limited alike, and what is not routed is not answered.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = "spring.datasource.url=jdbc:h2:mem:door;DB_CLOSE_DELAY=-1")
@Import({ FrontDoorIntegrationTests.ProbeApi.class, FrontDoorIntegrationTests.ProbePages.class })
class RawRequestsIntegrationTests {

	private static final String PASSWORD = "ice lantern rime book";

	private static final Actor TEST = new Actor("Test", "administrator", "test");

	private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

	private static final Pattern COOKIE = Pattern.compile("(?i)\r\nset-cookie: (rimebook-form=[^;\r]+)");

	@LocalServerPort
	private int port;

	@Autowired
	private People people;

	@Autowired
	private CodeGuessing guessing;

	private String name;

	private String cookie = "";

	private String token = "";

	@BeforeEach
	void aFormAndAName() throws IOException {
		this.guessing.recent().forEach((stop) -> this.guessing.free(stop.id(), TEST));
		this.name = "p" + UUID.randomUUID().toString().substring(0, 8);
		String page = send("GET /sign-in", "", "");
		Matcher form = TOKEN.matcher(page);
		Matcher kept = COOKIE.matcher(page);
		assertThat(form.find() && kept.find()).isTrue();
		this.token = form.group(1);
		this.cookie = kept.group(1);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/sign-in", "/%73ign-in", "/sign%2din" })
	void passwordsAreNotGuessedUnderAnotherSpelling(String path) throws IOException {
		assertThat(triesUntilRefused(path, "signInName=" + this.name + "&password=wrong")).isBetween(9, 12);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/judge", "/%6audge", "/j%75dge" })
	void seatCodesAreNotGuessedUnderAnotherSpelling(String path) throws IOException {
		assertThat(triesUntilRefused(path, "code=AAAAAAAA")).isBetween(18, 22);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/api/seat-pairings", "/api/seat-%70airings", "/%61pi/seat-pairings" })
	void programsGuessNoSeatCodesUnderAnotherSpelling(String path) throws IOException {
		int tries = 0;
		while (status(json("POST " + path, "{\"code\":\"AAAAAAAA\"}")) == 422 && tries < 40) {
			tries++;
		}
		assertThat(tries).isBetween(18, 22);
		String refused = json("POST " + path, "{\"code\":\"AAAAAAAA\"}");
		assertThat(status(refused)).isEqualTo(429);
		assertThat(refused).contains("application/problem+json", "too-many-attempts");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/set-up/guess", "/%73et-up/guess", "/set%2dup/other" })
	void theSetUpLinkIsNotGuessedUnderAnotherSpelling(String path) throws IOException {
		int tries = 0;
		while (status(form("POST " + path, "")) == 404 && tries < 40) {
			tries++;
		}
		assertThat(status(form("POST " + path, ""))).isEqualTo(429);
		assertThat(tries).isLessThanOrEqualTo(12);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/sign-in;a=b", "//sign-in", "/./sign-in", "/x/../sign-in", "/SIGN-IN", "/sign-in/",
			"/sign-in%3b", "/%2fsign-in", "/sign-in%00", "/sign%252din" })
	void whatIsNotTheRouteOpensNoDoor(String path) throws IOException {
		this.people.add(new DraftPerson(this.name, "Person " + this.name, Set.of(Role.REFEREE), PASSWORD), TEST);
		String answer = form("POST " + path, "signInName=" + this.name + "&password=" + encode(PASSWORD));
		assertThat(status(answer)).isIn(302, 400, 403, 404, 405);
		assertThat(answer).doesNotContainIgnoringCase("set-cookie: rimebook=");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/desk/people", "/desk/%70eople", "/%64esk/people", "/DESK/people", "//desk/people",
			"/desk;x/people", "/desk/people;x", "/desk//people" })
	void noDeskOpensToStrangersUnderAnySpelling(String path) throws IOException {
		assertThat(status(send("GET " + path, "", ""))).isIn(302, 400, 404);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/api/public/probe", "/%61pi/public/probe", "/api/publi%63/probe" })
	void longBodiesAreRefusedUnderAnySpelling(String path) throws IOException {
		String answer = json("POST " + path, "{\"size\":" + " ".repeat(BodyLimitFilter.MOST) + "1}");
		assertThat(status(answer)).isEqualTo(413);
		assertThat(answer).contains("application/problem+json");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/api/judge/table", "/%61pi/judge/table", "/api/%6audge/table" })
	void aSeatIsAskedForUnderAnySpelling(String path) throws IOException {
		String answer = send("GET " + path, "Authorization: Bearer none\r\n", "");
		assertThat(status(answer)).isEqualTo(401);
		assertThat(answer).contains("application/problem+json", "not-signed-in");
	}

	@Test
	void guessingFromEverywhereIsSlowedForStrangersNotForWhoeverWasHereBefore() throws IOException {
		this.people.add(new DraftPerson(this.name, "Person " + this.name, Set.of(Role.REFEREE), PASSWORD), TEST);
		assertThat(status(form("POST /sign-in", "signInName=" + this.name + "&password=" + encode(PASSWORD))))
			.isEqualTo(302);
		assertThat(triesUntilRefused("/sign-in", "signInName=" + this.name.toUpperCase() + "&password=wrong"))
			.isBetween(9, 12);
	}

	private int triesUntilRefused(String path, String fields) throws IOException {
		int tries = 0;
		while (status(form("POST " + path, fields)) == 422 && tries < 40) {
			tries++;
		}
		assertThat(status(form("POST " + path, fields))).isEqualTo(429);
		return tries;
	}

	private String form(String line, String fields) throws IOException {
		return send(line, "Content-Type: application/x-www-form-urlencoded\r\n",
				"_csrf=" + encode(this.token) + "&" + fields);
	}

	private String json(String line, String body) throws IOException {
		return send(line, "Content-Type: application/json\r\n", body);
	}

	private String send(String line, String headers, String body) throws IOException {
		byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
		String head = line + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nCookie: " + this.cookie + "\r\n"
				+ headers + "Content-Length: " + bytes.length + "\r\n\r\n";
		try (Socket socket = new Socket("localhost", this.port)) {
			socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
			socket.getOutputStream().write(bytes);
			socket.getOutputStream().flush();
			return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		}
	}

	private static int status(String answer) {
		return Integer.parseInt(answer.substring(9, 12));
	}

	private static String encode(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8);
	}

}
