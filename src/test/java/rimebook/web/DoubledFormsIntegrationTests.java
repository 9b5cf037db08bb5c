package rimebook.web;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Races;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class DoubledFormsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private HttpClient browser;

	@BeforeEach
	void theAdministratorSignsIn() {
		this.browser = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
		String name = Crew.add(this.context, Role.ADMINISTRATOR);
		assertThat(now(
				post("/sign-in", fields("/sign-in", "/sign-in", Map.of("signInName", name, "password", Crew.PASSWORD))))
			.statusCode()).isEqualTo(302);
	}

	@Test
	void aFormSentTwiceAtOnceGivesOneRowAndOneAnswer() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			String name = "Doubled " + UUID.randomUUID();
			String form = official(name);
			List<HttpResponse<String>> answers = both(form, form);
			assertThat(answers).extracting(HttpResponse::statusCode).containsOnly(302);
			assertThat(answers).extracting(DoubledFormsIntegrationTests::location).doesNotContainNull();
			assertThat(answers.stream().map(DoubledFormsIntegrationTests::location).distinct()).hasSize(1);
			assertThat(rows(name)).isOne();
			assertThat(location(now(post("/desk/officials", form)))).isEqualTo(location(answers.get(0)));
			assertThat(rows(name)).isOne();
		}
	}

	@Test
	void twoFormsOfOneSessionSentAtOnceAreBothDone() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			String one = "One " + UUID.randomUUID();
			String other = "Other " + UUID.randomUUID();
			assertThat(both(official(one), official(other))).extracting(HttpResponse::statusCode).containsOnly(302);
			assertThat(rows(one) + rows(other)).isEqualTo(2);
		}
	}

	@Test
	void aFormThatWasCorrectedIsDoneAgain() {
		String one = "First " + UUID.randomUUID();
		String form = official(one);
		String corrected = form.replace("First", "Second");
		assertThat(now(post("/desk/officials", form)).statusCode()).isEqualTo(302);
		assertThat(now(post("/desk/officials", corrected)).statusCode()).isEqualTo(302);
		assertThat(rows(one) + rows(one.replace("First", "Second"))).isEqualTo(2);
	}

	@Test
	void whatWasRefusedMayBeSentAgain() {
		String name = "Known " + UUID.randomUUID();
		String again = official(name);
		assertThat(now(post("/desk/officials", official(name))).statusCode()).isEqualTo(302);
		assertThat(now(post("/desk/officials", again)).statusCode()).isEqualTo(422);
		assertThat(now(post("/desk/officials", again)).statusCode()).isEqualTo(422);
		assertThat(rows(name)).isOne();
	}

	@Test
	void theRepeatedAnswerSaysTheSameWord() {
		String form = official("Told " + UUID.randomUUID());
		now(post("/desk/officials", form));
		String location = location(now(post("/desk/officials", form)));
		String page = now(HttpRequest.newBuilder(at(location)).GET()).body();
		assertThat(Jsoup.parse(page).select(".notice, [role=status]").text()).isNotBlank();
	}

	private int rows(String name) {
		return this.database.sql("select count(*) from official where name = ?")
			.param(name)
			.query(Integer.class)
			.single();
	}

	private String official(String name) {
		return fields("/desk/officials/new", "/desk/officials", Map.of("name", name, "club", "", "qualification", ""));
	}

	private String fields(String page, String action, Map<String, String> typed) {
		var form = Jsoup.parse(now(HttpRequest.newBuilder(at(page)).GET()).body())
			.select("form[method=post][action=" + action + "]")
			.first();
		assertThat(form).isNotNull();
		Stream<String> hidden = form.select("input[type=hidden]")
			.stream()
			.map((field) -> field.attr("name") + "=" + encode(field.val()));
		Stream<String> own = typed.entrySet().stream().map((field) -> field.getKey() + "=" + encode(field.getValue()));
		return Stream.concat(hidden, own).collect(Collectors.joining("&"));
	}

	private List<HttpResponse<String>> both(String one, String other) throws Exception {
		return Races.both(() -> now(post("/desk/officials", one)), () -> now(post("/desk/officials", other)));
	}

	private HttpRequest.Builder post(String path, String body) {
		return HttpRequest.newBuilder(at(path))
			.header("Content-Type", "application/x-www-form-urlencoded")
			.POST(BodyPublishers.ofString(body));
	}

	private HttpResponse<String> now(HttpRequest.Builder request) {
		return this.browser.sendAsync(request.build(), BodyHandlers.ofString()).join();
	}

	private URI at(String path) {
		return URI.create("http://localhost:" + this.port).resolve(path);
	}

	private static String location(HttpResponse<String> answer) {
		return answer.headers().firstValue("location").orElse(null);
	}

	private static String encode(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8);
	}

}
