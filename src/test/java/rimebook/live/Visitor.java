package rimebook.live;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;

import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Lazy;
import org.springframework.core.env.Environment;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.results.IceChanged;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

/**
 * Sets the stage, publishes as the crew does, and looks at it over HTTP as anybody can.
 */
@TestComponent
@Lazy
class Visitor {

	private final HttpClient http = HttpClient.newHttpClient();

	private final Environment environment;

	private final AtomicReference<Stage> stage = new AtomicReference<>(new Stage());

	private final RenditionCache renditions;

	private final Pulse pulse;

	private final ApplicationEventPublisher events;

	private final TransactionTemplate transactions;

	Visitor(Environment environment, Competitions competitions, Entries entries, StartingOrderDraw draw,
			Standings standings, RenditionCache renditions, Pulse pulse, ApplicationEventPublisher events,
			TransactionTemplate transactions) {
		this.environment = environment;
		this.renditions = renditions;
		this.pulse = pulse;
		this.events = events;
		this.transactions = transactions;
		Stage.play(this.stage::get, competitions, entries, draw, standings);
	}

	/** Show this stage and nothing of an earlier one. */
	void watch(Stage stage) {
		this.stage.set(stage);
		this.renditions.clear();
		this.pulse.quicken();
	}

	void publish(UUID scope, int number) {
		AuditedChange change = AuditedChange.of(Actor.system(), "result", scope, "result.published");
		this.transactions.executeWithoutResult((status) -> this.events
			.publishEvent(new ResultVersion.VersionPublished(ResultVersion.Scope.SEGMENT, scope, number, change)));
	}

	void publishIce(SegmentId segment) {
		this.transactions.executeWithoutResult((status) -> this.events.publishEvent(new IceChanged(segment)));
	}

	HttpResponse<String> get(String path, String... headers) {
		return send(request(path, headers), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
	}

	HttpResponse<byte[]> bytes(String path, String... headers) {
		return send(request(path, headers), HttpResponse.BodyHandlers.ofByteArray());
	}

	/** The lines of an endless answer; close it. */
	HttpResponse<InputStream> stream(String path, String... headers) {
		return send(request(path, headers), HttpResponse.BodyHandlers.ofInputStream());
	}

	Stream<String> lines(String path, String... headers) {
		return send(request(path, headers), HttpResponse.BodyHandlers.ofLines()).body();
	}

	int port() {
		return Integer.parseInt(this.environment.getRequiredProperty("local.server.port"));
	}

	String address(String path) {
		return "http://localhost:" + port() + path;
	}

	private HttpRequest.Builder request(String path, String... headers) {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address(path))).timeout(Duration.ofSeconds(20));
		return (headers.length > 0) ? request.headers(headers) : request;
	}

	private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
		try {
			return this.http.send(request.build(), handler);
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException(ex);
		}
	}

}
