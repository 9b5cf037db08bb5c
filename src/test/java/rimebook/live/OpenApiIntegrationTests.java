package rimebook.live;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.results.ResultVersion;
import rimebook.testsupport.RequiresPython;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What the description of the public data promises is asked of the service: every address
 * with the example's names, every member of every body, every example.
 */
@LiveTest
class OpenApiIntegrationTests {

	private static final Path EXAMPLES = Path.of("src/main/resources/openapi");

	private static final JsonMapper JSON = JsonMapper.builder().build();

	@Autowired
	private Visitor visitor;

	private final Stage stage = new Stage();

	private JsonNode description = JSON.createObjectNode();

	@BeforeEach
	void afterNineTeams() {
		IntStream.range(0, 9).forEach((i) -> this.stage.free().skate());
		this.stage.free().call();
		this.visitor.watch(this.stage);
		this.description = JSON.readTree(this.visitor.get("/api/openapi").body());
	}

	@Test
	void describesWhatIsPublicAndNothingElse() {
		assertThat(this.description.get("openapi").asString()).startsWith("3.1");
		List<String> paths = List.copyOf(this.description.get("paths").propertyNames());
		assertThat(paths)
			.allMatch(
					(path) -> path.startsWith("/api/public/competitions") || path.startsWith("/follow/{competition}/"))
			.contains("/follow/{competition}/signals", "/follow/{competition}/moments",
					"/api/public/competitions/{competition}/events/{event}/segments/{segment}.csv")
			.hasSizeGreaterThan(22);
		assertThat(this.description.get("servers").get(0).get("url").asString()).isEqualTo("/");
		assertThat(this.visitor.get("/springdoc").statusCode()).isEqualTo(404);
	}

	@Test
	void everyExampleIsWhatTheServiceAnswers() {
		List<String> wrong = new ArrayList<>();
		DescribedBody described = new DescribedBody(this.description);
		for (Map.Entry<String, JsonNode> path : this.description.get("paths").properties()) {
			JsonNode operation = path.getValue().get("get");
			String id = operation.get("operationId").asString();
			if (id.equals("signals") || id.startsWith("timetable")) {
				// One goes on for ever, the other needs a plan: ReleasedIntegrationTests.
				continue;
			}
			String address = address(path.getKey(), operation);
			HttpResponse<String> answer = this.visitor.get(address);
			Map.Entry<String, JsonNode> content = operation.at("/responses/200/content").properties().iterator().next();
			assertThat(answer.statusCode()).as(address).isEqualTo(200);
			assertThat(answer.headers().firstValue("Content-Type").orElse("")).as(address).startsWith(content.getKey());
			String example;
			if (content.getKey().equals("application/json")) {
				JsonNode body = JSON.readTree(answer.body());
				wrong.addAll(described.faults(content.getValue().get("schema"), body, id));
				example = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(DescribedBody.shown(body));
				write(id + ".json", example);
				if (!masked(DescribedBody.shown(body)).equals(masked(content.getValue().get("example")))) {
					wrong.add(id + ": the example is not what the service answers");
				}
			}
			else {
				example = String.join("\r\n", answer.body().lines().limit(1 + DescribedBody.SHOWN).toList()) + "\r\n";
				write(id + ".csv", example);
				if (!mask(example).equals(mask(content.getValue().path("example").asString("")))) {
					wrong.add(id + ": the example is not what the service answers");
				}
			}
		}
		assertThat(wrong).isEmpty();
	}

	@Test
	void anySiteMayReadAndNobodyIsAskedWho() {
		for (String path : List.of("/api/public/competitions/fjord-days", "/api/public/competitions/nowhere",
				"/api/openapi", "/follow/fjord-days/moments")) {
			for (int i = 0; i < 2; i++) {
				HttpResponse<String> answer = this.visitor.get(path, "Origin", "https://elsewhere.example");
				assertThat(answer.headers().firstValue("Access-Control-Allow-Origin")).as(path).hasValue("*");
				assertThat(answer.headers().firstValue("Access-Control-Allow-Credentials")).as(path).isEmpty();
			}
		}
		assertThat(this.visitor.get("/follow/fjord-days").headers().firstValue("Access-Control-Allow-Origin"))
			.isEmpty();
		assertThat(this.visitor.get("/sign-in").headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
	}

	@Test
	@RequiresPython
	void sampleClientFollowsASegment() throws IOException, InterruptedException {
		Process client = new ProcessBuilder("python3", "src/test/python/follow.py", this.visitor.address(""),
				"fjord-days", "junior", "free-skating", "2")
			.redirectErrorStream(true)
			.start();
		try (BufferedReader lines = client.inputReader(StandardCharsets.UTF_8)) {
			assertThat(lines.readLine()).startsWith("With three teams left, Alder leads the event");
			ResultVersion version = this.stage.free().skate();
			this.visitor.publish(version.scopeId(), version.number());
			assertThat(lines.lines().toList()).contains("   1  Alder")
				.anyMatch((line) -> line.startsWith("With two teams left, "));
			assertThat(client.waitFor()).isZero();
		}
		finally {
			client.destroyForcibly();
		}
	}

	@Test
	void refusalsAreProblems() {
		HttpResponse<String> answer = this.visitor.get("/api/public/competitions/nowhere");
		assertThat(answer.statusCode()).isEqualTo(404);
		assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
		assertThat(new DescribedBody(this.description).faults(
				JSON.readTree("{\"$ref\":\"#/components/schemas/Problem\"}"), JSON.readTree(answer.body()), "problem"))
			.isEmpty();
	}

	private static String address(String path, JsonNode operation) {
		String address = path;
		for (JsonNode parameter : operation.path("parameters")) {
			address = address.replace("{" + parameter.get("name").asString() + "}",
					parameter.path("example").asString("?"));
		}
		return address;
	}

	/** Examples are written anew with {@code -Drimebook.examples=write}. */
	private static void write(String name, String example) {
		if ("write".equals(System.getProperty("rimebook.examples"))) {
			try {
				Files.writeString(EXAMPLES.resolve(name), example);
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}
	}

	/** Numbers of the moment and digests differ from run to run. */
	private static JsonNode masked(JsonNode body) {
		return JSON.readTree(mask(JSON.writeValueAsString(body)));
	}

	private static String mask(String text) {
		return text.replaceAll("[0-9a-f]{64}", "digest").replaceAll("\"moment\":\\d+", "\"moment\":0");
	}

}
