package rimebook.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.junit.jupiter.params.provider.ValueSource;
import java.net.http.HttpHeaders;
import java.util.List;
import java.util.ArrayList;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

import rimebook.accounts.CrewSigns;
import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.PersonView;
import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

/** What only a running server shows: sessions, cookies, sizes, and what goes wrong. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "spring.datasource.url=jdbc:h2:mem:door;DB_CLOSE_DELAY=-1",
				"rimebook.door.proxies=127.0.0.1,::1" })
@Import({ FrontDoorIntegrationTests.ProbeApi.class, FrontDoorIntegrationTests.ProbePages.class })
class FrontDoorIntegrationTests {

	private static final String PASSWORD = "ice lantern rime book";

	private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

	private static final Actor TEST = new Actor("Test", "administrator", "test");

	@LocalServerPort
	private int port;

	@Autowired
	private People people;

	@Autowired
	private SeatCodes seatCodes;

	@Autowired
	private CrewSigns signs;

	@Autowired
	private JdbcClient database;

	private HttpClient browser;

	private String name;

	private PersonView person;

	@BeforeEach
	void somebodyNew() {
		this.browser = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
		this.name = "p" + UUID.randomUUID().toString().substring(0, 8);
		this.person = this.people.add(
				new DraftPerson(this.name, "Person " + this.name, Set.of(Role.REFEREE, Role.ADMINISTRATOR), PASSWORD),
				TEST);
	}

	@Test
	void whatAScriptImportsIsAskedForAnewAfterAnUpgrade() throws Exception {
		HttpResponse<String> part = get("/js/card/service.js");
		assertThat(part.statusCode()).isEqualTo(200);
		assertThat(part.headers().firstValue("Cache-Control")).hasValue("no-cache");
		assertThat(part.headers().firstValue("Last-Modified")).isPresent();
		assertThat(get("/js/card/none.js").statusCode()).isEqualTo(404);
	}

	@Test
	void filesAreNamedWithTheirFingerprintAndPagesByTheirAddress() throws Exception {
		String page = get("/judge").body();
		assertThat(page).containsPattern("<link rel=\"stylesheet\" href=\"/css/rimebook-\\p{XDigit}{32}\\.css\">")
			.contains(" action=\"/judge\"");
		Matcher sheet = Pattern.compile("href=\"(/css/rimebook-[^\"]+)\"").matcher(page);
		assertThat(sheet.find()).isTrue();
		assertThat(get(sheet.group(1)).statusCode()).isEqualTo(200);
	}

	@Test
	void signingInLeadsToThePageThatWasAskedFor() throws Exception {
		assertThat(get("/desk/people").headers().firstValue("location").orElseThrow()).endsWith("/sign-in");
		HttpResponse<String> answer = signIn(this.name.toUpperCase(), PASSWORD);
		assertThat(answer.statusCode()).isEqualTo(302);
		assertThat(answer.headers().firstValue("location").orElseThrow()).contains("/desk/people");
		assertThat(get("/desk/people").body()).contains("Person " + this.name, "Sign out");
	}

	@Test
	void aRefusedSignInKeepsTheNameAndNotThePassword() throws Exception {
		HttpResponse<String> answer = signIn(this.name, "wrong words");
		assertThat(answer.statusCode()).isEqualTo(422);
		assertThat(answer.body()).contains("do not fit together", "value=\"" + this.name + "\"")
			.doesNotContain("wrong words");
	}

	@Test
	void guessingIsStoppedForTheNameOnly() throws Exception {
		int refused = 0;
		HttpResponse<String> answer = signIn(this.name, "wrong words");
		for (; answer.statusCode() == 422 && refused < 40; refused++) {
			answer = signIn(this.name, "wrong words");
		}
		assertThat(answer.statusCode()).isEqualTo(429);
		assertThat(refused).isGreaterThanOrEqualTo(10);
		assertThat(answer.body()).contains("Too many attempts failed from here. Wait ");
		assertThat(answer.headers().firstValueAsLong("retry-after").orElseThrow()).isBetween(1L, 60L);
		somebodyNew();
		assertThat(signIn(this.name, PASSWORD).statusCode()).isEqualTo(302);
	}

	@Test
	void signingInOftenIsNoGuessing() throws Exception {
		for (int i = 0; i < 11; i++) {
			assertThat(signIn(this.name, PASSWORD).statusCode()).isEqualTo(302);
		}
	}

	@Test
	void whoeverLosesARoleLosesTheSession() throws Exception {
		signIn(this.name, PASSWORD);
		assertThat(get("/desk").statusCode()).isEqualTo(200);
		PersonView keeper = this.people
			.add(new DraftPerson("k" + this.name, "Keeper " + this.name, Set.of(Role.ADMINISTRATOR), PASSWORD), TEST);
		this.people.change(this.person.id(), this.person.version(), this.person.displayName(), Set.of(), TEST);
		assertThat(get("/desk").statusCode()).isEqualTo(302);
		assertThat(keeper.active()).isTrue();
	}

	@Test
	void whoSignsInOrTakesASeatIsKnownAtTheDoor() throws Exception {
		List<String> given = signIn(this.name, PASSWORD).headers().allValues("set-cookie");
		String crew = given.stream().filter((one) -> one.startsWith("rimebook-crew=")).findFirst().orElseThrow();
		String sign = crew.substring(crew.indexOf('=') + 1, crew.indexOf(';'));
		assertThat(crew).contains("HttpOnly", "SameSite=Lax");
		assertThat(this.signs.isGenuine(sign)).isTrue();
		assertThat(get("/desk").headers().allValues("set-cookie")).as("once is enough")
			.noneMatch((one) -> one.startsWith("rimebook-crew"));
		String code = this.seatCodes.issue(UUID.randomUUID(), "Judge 5, Adult", TEST);
		assertThat(this.signs.isGenuine(this.seatCodes.pair(code, "tablet", null).token())).isTrue();
		assertThat(get("/").headers().allValues("set-cookie")).isEmpty();
	}

	/** Whoever holds the tablet learns no name, and no door of the desks is offered. */
	@Test
	void anErrorPageOfATabletLeadsBackToItsCardAndNowhereElse() throws Exception {
		String code = this.seatCodes.issue(UUID.randomUUID(), "Judge 5, Adult", TEST);
		String seat = this.seatCodes.pair(code, "tablet", null).token();
		HttpResponse<String> page = send(to("/judge/nowhere").header("Cookie", SeatDeviceFilter.COOKIE + "=" + seat));
		assertThat(page.statusCode()).isEqualTo(404);
		assertThat(page.body()).contains("href=\"/judge\"")
			.doesNotContain("Judge 5", "Sign out", "own-password", "To the first page", "Parts of Rimebook");
	}

	@Test
	void anErrorPageShowsTheNameOnTheRecordAndNotTheOneToSignInWith() throws Exception {
		signIn(this.name, PASSWORD);
		HttpResponse<String> page = get("/desk/competitions/" + UUID.randomUUID());
		assertThat(page.statusCode()).isEqualTo(404);
		assertThat(page.body()).contains("Person " + this.name, "Sign out", "To the first page")
			.doesNotContain(">" + this.name + "<");
	}

	@Test
	void aSignIsNeitherMadeUpNorChangedNorKeptForEver() {
		Instant now = Instant.now();
		String sign = this.signs.until(now.plusSeconds(60));
		assertThat(this.signs.isGenuine(sign)).isTrue();
		assertThat(this.signs.isGenuine(this.signs.until(now.minusSeconds(1)))).isFalse();
		assertThat(this.signs.isGenuine(sign.replace("until:", "until:9"))).isFalse();
		assertThat(this.signs.isGenuine(sign.substring(0, sign.indexOf('.')))).isFalse();
		assertThat(this.signs.isGenuine(sign + "x")).isFalse();
		assertThat(this.signs.isGenuine("")).isFalse();
		assertThat(this.signs.isGenuine(".")).isFalse();
		assertThat(this.signs.isGenuine("x".repeat(5000) + "." + "y")).isFalse();
	}

	@Test
	void signingOutEndsTheSession() throws Exception {
		signIn(this.name, PASSWORD);
		String token = token(get("/desk").body());
		assertThat(post("/sign-out", "_csrf=" + encode(token)).statusCode()).isEqualTo(302);
		assertThat(get("/desk").statusCode()).isEqualTo(302);
	}

	@Test
	void aBusySessionEndsWithItsLife() throws Exception {
		signIn(this.name, PASSWORD);
		age(Duration.ofHours(12).minusMinutes(5));
		assertThat(get("/desk").statusCode()).isEqualTo(200);
		age(Duration.ofMinutes(6));
		assertThat(get("/desk").headers().firstValue("location").orElseThrow()).endsWith("/sign-in");
		assertThat(signIn(this.name, PASSWORD).statusCode()).isEqualTo(302);
		assertThat(get("/desk").statusCode()).isEqualTo(200);
	}

	@Test
	void signingInAgainBeginsANewLife() throws Exception {
		signIn(this.name, PASSWORD);
		age(Duration.ofHours(11));
		signIn(this.name, PASSWORD);
		age(Duration.ofHours(11));
		assertThat(get("/desk").statusCode()).isEqualTo(200);
	}

	/** Without HTTPS none is "Secure"; with it see the proxy's tests. */
	@Test
	void noCookieIsForScriptsOrOtherSites() throws Exception {
		List<String> cookies = new ArrayList<>(get("/desk/people").headers().allValues("set-cookie"));
		cookies.addAll(get("/sign-in").headers().allValues("set-cookie"));
		cookies.addAll(get("/judge").headers().allValues("set-cookie"));
		cookies.addAll(signIn(this.name, PASSWORD).headers().allValues("set-cookie"));
		assertThat(cookies).hasSizeGreaterThanOrEqualTo(3)
			.allSatisfy((cookie) -> assertThat(cookie).contains("HttpOnly").containsPattern("SameSite=(Lax|Strict)"));
	}

	@Test
	void cookiesOfHttpsAreSentOverHttpsOnly() throws Exception {
		List<String> cookies = new ArrayList<>();
		for (String path : List.of("/desk/people", "/judge")) {
			cookies.addAll(send(overHttps(path)).headers().allValues("set-cookie"));
		}
		HttpResponse<String> page = send(overHttps("/sign-in"));
		String form = page.headers().firstValue("set-cookie").orElseThrow();
		cookies.add(form);
		HttpResponse<String> signedIn = HttpClient.newHttpClient()
			.send(overHttps("/sign-in").header("Cookie", form.substring(0, form.indexOf(';')))
				.header("Content-Type", "application/x-www-form-urlencoded")
				.POST(BodyPublishers.ofString("_csrf=" + encode(token(page.body())) + "&signInName=" + this.name
						+ "&password=" + encode(PASSWORD)))
				.build(), BodyHandlers.ofString());
		cookies.addAll(signedIn.headers().allValues("set-cookie"));
		assertThat(cookies).anyMatch((one) -> one.startsWith("rimebook="))
			.allSatisfy((one) -> assertThat(one).contains("Secure"));
	}

	private HttpRequest.Builder overHttps(String path) {
		return to(path).header("X-Forwarded-Proto", "https");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/", "/sign-in", "/judge", "/desk", "/api/nowhere" })
	void everyAnswerForbidsDevicesAndForeignWindows(String path) throws Exception {
		HttpHeaders headers = send(overHttps(path)).headers();
		assertThat(headers.firstValue("permissions-policy").orElseThrow()).contains("camera=()", "microphone=()",
				"geolocation=()");
		assertThat(headers.firstValue("cross-origin-opener-policy")).hasValue("same-origin");
		assertThat(get(path).headers().firstValue("cross-origin-opener-policy")).as("without TLS it is not heeded")
			.isEmpty();
		assertThat(headers.firstValue("content-security-policy").orElseThrow()).contains("frame-ancestors 'none'");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/css/rimebook.css", "/js/follow.js", "/img/rimebook.svg", "/css/none.css",
			"/follow/nowhere?part=live" })
	void filesAndPartsSayWhatConcernsNoDocumentAlone(String path) throws Exception {
		HttpHeaders headers = send(overHttps(path)).headers();
		assertThat(headers.firstValue("content-security-policy").orElseThrow()).contains("frame-ancestors 'none'");
		assertThat(headers.firstValue("x-content-type-options")).hasValue("nosniff");
		assertThat(headers.firstValue("strict-transport-security")).isPresent();
		assertThat(headers.firstValue("permissions-policy")).isEmpty();
		assertThat(headers.allValues("set-cookie")).isEmpty();
	}

	private void age(Duration time) {
		this.database
			.sql("update spring_session set creation_time = creation_time - :time where principal_name = :name")
			.param("time", time.toMillis())
			.param("name", this.name)
			.update();
	}

	@Test
	void aFormWithoutTokenIsRefusedInWords() throws Exception {
		HttpResponse<String> answer = post("/sign-in", "signInName=x&password=y");
		assertThat(answer.statusCode()).isEqualTo(403);
		assertThat(answer.body()).contains("This form was open for too long");
	}

	@Test
	void aTabletIsKnownByItsTokenAndNeverHasASession() throws Exception {
		UUID seat = UUID.randomUUID();
		String code = this.seatCodes.issue(seat, "Judge 3, Adult", TEST);
		String token = this.seatCodes.pair(code, "tablet", null).token();
		HttpRequest.Builder request = to("/api/judge/nothing-here");
		assertThat(send(request).statusCode()).isEqualTo(401);
		HttpResponse<String> byHeader = send(to("/api/judge/nothing-here").header("Authorization", "Bearer " + token));
		HttpResponse<String> byCookie = send(to("/api/judge/nothing-here").header("Cookie", "rimebook-seat=" + token));
		assertThat(byHeader.statusCode()).isEqualTo(404);
		assertThat(byCookie.statusCode()).isEqualTo(404);
		assertThat(byHeader.headers().allValues("set-cookie")).isEmpty();
		this.seatCodes.issue(seat, "Judge 3, Adult", TEST);
		assertThat(send(to("/api/judge/nothing-here").header("Authorization", "Bearer " + token)).statusCode())
			.isEqualTo(401);
	}

	@Test
	void aTabletsTokenOpensNoDesk() throws Exception {
		String code = this.seatCodes.issue(UUID.randomUUID(), "Judge 4, Adult", TEST);
		String token = this.seatCodes.pair(code, "tablet", null).token();
		assertThat(send(to("/desk").header("Authorization", "Bearer " + token)).statusCode()).isEqualTo(302);
	}

	@Test
	void aTabletWithoutSeatIsLedToTheJoinPage() throws Exception {
		HttpResponse<String> answer = get("/judge/card");
		assertThat(answer.statusCode()).isEqualTo(302);
		assertThat(answer.headers().firstValue("location").orElseThrow()).endsWith("/judge");
	}

	@Test
	void aPageForEverybodySetsNoCookie() throws Exception {
		HttpResponse<String> answer = get("/problems/stale-version");
		assertThat(answer.statusCode()).isEqualTo(200);
		assertThat(answer.headers().allValues("set-cookie")).isEmpty();
	}

	@ParameterizedTest(name = "{0} {1} {2} {3}: {4} {5}")
	@CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
			GET    | /api/nowhere      |                  |                 | 404 | no-such-page
			GET    | /api/public/none  |                  |                 | 404 | no-such-page
			GET    | /api/%2e%2e/desk  |                  |                 | 400 | bad-request
			DELETE | /api/public/probe |                  |                 | 405 | wrong-method
			POST   | /api/public/probe | text/plain       | hello           | 415 | unsupported-type
			POST   | /api/public/probe | application/json | {"size":        | 400 | malformed-json
			POST   | /api/public/probe | application/json |                 | 400 | malformed-json
			POST   | /api/public/probe | application/json | {"size":"big"}  | 400 | field-malformed
			POST   | /api/public/probe | application/json | {}              | 400 | field-malformed
			POST   | /api/public/probe | application/json | {"size":7}      | 422 | size-refused
			POST   | /api/public/probe | application/json | {"size":9}      | 409 | size-conflict
			GET    | /api/public/probe?page=x |           |                 | 400 | field-malformed
			GET    | /api/public/probe |                  |                 | 500 | internal-error
			PUT    | /api/cards/1      | application/json | {}              | 401 | not-signed-in
			""")
	void aProgramIsToldWhatIsWrong(String method, String path, String type, String body, int status, String code)
			throws Exception {
		HttpRequest.Builder request = to(path).method(method,
				(body != null) ? BodyPublishers.ofString(body) : BodyPublishers.noBody());
		HttpResponse<String> answer = send((type != null) ? request.header("Content-Type", type) : request);
		assertThat(answer.statusCode()).isEqualTo(status);
		assertThat(answer.headers().firstValue("content-type").orElseThrow()).startsWith("application/problem+json");
		assertThat(answer.body())
			.contains("\"code\":\"" + code + "\"", "\"type\":\"/problems/" + code + "\"", "\"status\":" + status)
			.doesNotContain("rimebook.", "java.", "springframework", "Exception", "a secret");
	}

	@Test
	void theFieldAtFaultIsNamed() throws Exception {
		HttpResponse<String> answer = send(to("/api/public/probe").header("Content-Type", "application/json")
			.POST(BodyPublishers.ofString("{\"size\":7}")));
		assertThat(answer.body()).contains("\"errors\":[{\"field\":\"size\",\"message\":\"Seven is too many.\"}]");
	}

	@Test
	void tooLongABodyIsRefusedWhetherOrNotItSaysItsLength() throws Exception {
		String body = "{\"size\":" + " ".repeat(BodyLimitFilter.MOST) + "1}";
		assertThat(sendJson(BodyPublishers.ofString(body)).statusCode()).isEqualTo(413);
		byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
		HttpResponse<String> unannounced = sendJson(
				BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(bytes)));
		assertThat(unannounced.statusCode()).isEqualTo(413);
		assertThat(unannounced.body()).contains("\"code\":\"too-large\"");
	}

	@Test
	void aBugShowsAReferenceAndNothingElse() throws Exception {
		HttpResponse<String> answer = get("/follow/probe");
		assertThat(answer.statusCode()).isEqualTo(500);
		assertThat(answer.body()).containsPattern("Reference [0-9a-f]{8}")
			.contains("Something went wrong inside")
			.doesNotContain("a secret", "IllegalState");
	}

	@Test
	void aRefusedPageSaysTheSentenceInTheLayout() throws Exception {
		HttpResponse<String> answer = get("/follow/probe-refused");
		assertThat(answer.statusCode()).isEqualTo(422);
		assertThat(answer.body()).contains("Seven is too many.", "class=\"masthead\"");
	}

	@Test
	void tooLargeAFileIsRefusedInWords() throws Exception {
		signIn(this.name, PASSWORD);
		String token = token(get("/desk").body());
		HttpResponse<String> small = upload(token, 10);
		assertThat(small.statusCode()).isEqualTo(200);
		assertThat(small.body()).isEqualTo("10");
		HttpResponse<String> large = upload(token, 10_000_000);
		assertThat(large.statusCode()).isEqualTo(413);
		assertThat(large.body()).contains("larger than Rimebook accepts");
	}

	private HttpResponse<String> upload(String token, int size) throws IOException, InterruptedException {
		String body = "--x\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token
				+ "\r\n--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n"
				+ "Content-Type: text/csv\r\n\r\n" + "a".repeat(size) + "\r\n--x--\r\n";
		return send(to("/desk/entries/probe").header("Content-Type", "multipart/form-data; boundary=x")
			.POST(BodyPublishers.ofString(body)));
	}

	private HttpResponse<String> signIn(String typed, String password) throws IOException, InterruptedException {
		String token = token(get("/sign-in").body());
		return post("/sign-in",
				"_csrf=" + encode(token) + "&signInName=" + encode(typed) + "&password=" + encode(password));
	}

	private static String token(String page) {
		Matcher token = TOKEN.matcher(page);
		assertThat(token.find()).isTrue();
		return token.group(1);
	}

	private static String encode(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8);
	}

	private HttpResponse<String> get(String path) throws IOException, InterruptedException {
		return send(to(path));
	}

	private HttpResponse<String> post(String path, String form) throws IOException, InterruptedException {
		return send(to(path).header("Content-Type", "application/x-www-form-urlencoded")
			.POST(BodyPublishers.ofString(form)));
	}

	private HttpResponse<String> sendJson(BodyPublisher body) throws IOException, InterruptedException {
		return send(to("/api/public/probe").header("Content-Type", "application/json").POST(body));
	}

	private HttpRequest.Builder to(String path) {
		return HttpRequest.newBuilder(URI.create("http://localhost:" + this.port + path));
	}

	private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
		return this.browser.send(request.build(), BodyHandlers.ofString());
	}

	@RestController
	static class ProbeApi {

		record Request(int size) {

			Request {
				if (size == 9) {
					throw new ConflictException("size-conflict", "size", Sentence.said("Nine is taken."));
				}
			}

		}

		@GetMapping("/api/public/probe")
		String fail(@RequestParam(defaultValue = "1") int page) {
			throw new IllegalStateException("a secret of page " + page);
		}

		@PostMapping(path = "/api/public/probe", consumes = "application/json")
		String take(@RequestBody Request request) {
			throw new RuleViolationException("size-refused", "size", Sentence.said("Seven is too many."));
		}

	}

	@Controller
	static class ProbePages {

		@GetMapping("/follow/probe")
		String fail() {
			throw new IllegalStateException("a secret");
		}

		@GetMapping("/follow/probe-refused")
		String refuse() {
			throw new RuleViolationException("size-refused", Sentence.said("Seven is too many."));
		}

		@PostMapping("/desk/entries/probe")
		@ResponseBody
		String take(@RequestParam MultipartFile file) {
			return Long.toString(file.getSize());
		}

	}

}
