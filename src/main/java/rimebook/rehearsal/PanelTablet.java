package rimebook.rehearsal;

import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

import rimebook.performances.PerformanceId;
import rimebook.points.PointsMarks;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Hundredths;

/** One seat's tablet, speaking HTTP as a real one does. */
class PanelTablet {

	private static final Duration PATIENCE = Duration.ofSeconds(10);

	private final HttpClient http;

	private final URI service;

	private final JsonMapper json = JsonMapper.shared();

	private @Nullable String token;

	PanelTablet(HttpClient http, URI service) {
		this.http = http;
		this.service = service;
	}

	/** Tell whether this tablet holds its seat, as far as it knows. */
	boolean isPaired() {
		return this.token != null;
	}

	/** Join the seat with its code. */
	void pair(String code) throws IOException, InterruptedException {
		HttpResponse<String> answer = send("POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}");
		this.token = (answer.statusCode() < 300) ? this.json.readTree(answer.body()).get("token").asString() : null;
	}

	/**
	 * Send a card.
	 * @return whether the service has it
	 */
	boolean send(UUID id, PerformanceId performance, CardMarks marks) throws IOException, InterruptedException {
		String body = "{\"performance\":\"%s\",\"sequence\":1,\"first\":%s,\"second\":%s}".formatted(performance,
				Hundredths.decimal(marks.first()), Hundredths.decimal(marks.second()));
		return put("/api/cards/" + id, body);
	}

	/**
	 * Send a card of points judging.
	 * @return whether the service has it
	 */
	boolean send(UUID id, PerformanceId performance, PointsMarks marks) throws IOException, InterruptedException {
		Map<String, BigDecimal> components = new LinkedHashMap<>();
		marks.components().forEach((name, mark) -> components.put(name, BigDecimal.valueOf(mark, 2)));
		String body = this.json.writeValueAsString(Map.of("performance", performance.value(), "sequence", 1, "grades",
				marks.grades(), "components", components));
		return put("/api/points-cards/" + id, body);
	}

	private boolean put(String path, String body) throws IOException, InterruptedException {
		int status = send("PUT", path, body).statusCode();
		if (status == 401) {
			// Somebody else joined this seat: the newer pairing wins.
			this.token = null;
		}
		return status < 300;
	}

	private HttpResponse<String> send(String method, String path, String body)
			throws IOException, InterruptedException {
		HttpRequest.Builder request = HttpRequest.newBuilder(this.service.resolve(path))
			.timeout(PATIENCE)
			.header("Content-Type", "application/json")
			.header("Accept", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (this.token != null) {
			request.header("Authorization", "Bearer " + this.token);
		}
		return this.http.send(request.build(), HttpResponse.BodyHandlers.ofString());
	}

}
