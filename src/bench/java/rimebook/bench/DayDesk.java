package rimebook.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

import org.springframework.context.ApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.accounts.Role;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Visitor;

/**
 * Everybody who works at a day, over HTTP: people at their desks fill in pages, tablets send
 * JSON. Whoever is told that the house is full tries again.
 */
final class DayDesk {

	/** As many as may send at once. */
	private static final int TABLETS = 9;

	private final HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

	private final ExecutorService tablets = Executors.newFixedThreadPool(TABLETS);

	/** Who signs in as what. */
	private final Map<Role, String> names = new HashMap<>();

	private final Map<Role, Visitor> people = new HashMap<>();

	/** What the database should hold, by the identity of the card. */
	private final Map<String, String> acknowledged = new ConcurrentHashMap<>();

	private final Queue<Long> cards = new ConcurrentLinkedQueue<>();

	private final AtomicInteger turnedAway = new AtomicInteger();

	private int port;

	/** Let in somebody of each role. */
	DayDesk(ApplicationContext context, Role... roles) {
		List.of(roles).forEach((role) -> this.names.put(role, Crew.add(context, role)));
	}

	/** What somebody is called on pages. */
	String name(Role role) {
		return Crew.displayName(this.names.get(role));
	}

	/** Sign everybody in, and pair the tablets of these events. */
	void begin(int port, List<DayEvent> events) throws InterruptedException {
		this.port = port;
		this.names.forEach((role, name) -> this.people.put(role, Visitor.signedIn(port, name, Crew.PASSWORD)));
		for (DayEvent event : events) {
			for (String code : event.codes) {
				event.tokens.add(read(send("POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}", "")).get("token").asString());
			}
		}
	}

	/** What should be in the database of each card that was acknowledged, by its identity. */
	Map<String, String> acknowledged() {
		return this.acknowledged;
	}

	/** How long each of them took. */
	Queue<Long> cards() {
		return this.cards;
	}

	/** How many requests of the crew had to be sent again. */
	int turnedAway() {
		return this.turnedAway.get();
	}

	/** Open a page. */
	Visitor.Page open(Role role, String path) throws InterruptedException {
		Visitor.Page page = this.people.get(role).open(path);
		while (page.status() == 503) {
			rest();
			page = this.people.get(role).open(path);
		}
		return page;
	}

	private void rest() throws InterruptedException {
		this.turnedAway.incrementAndGet();
		TimeUnit.MILLISECONDS.sleep(300);
	}

	/** Tell whether the referee finds that form on a page. */
	boolean isThere(String path, String form) throws InterruptedException {
		return open(Role.REFEREE, path).document().selectFirst(form) != null;
	}

	/** Fill in a form and send it. */
	void act(Role role, String path, String form, Map<String, String> typed) throws InterruptedException {
		Visitor.Page answer = open(role, path).submit(form, typed);
		while (answer.status() == 503) {
			rest();
			answer = open(role, path).submit(form, typed);
		}
		if (answer.status() != 200) {
			throw new AssertionError(path + " answered " + answer.status() + ": " + answer.document().select("main").text());
		}
	}

	/** All judges mark the team on the ice; returns its name. */
	String mark(DayEvent event, int segment) throws Exception {
		if (event.byPoints) {
			call(event, segment);
		}
		return send(event, segment, event.tokens.size());
	}

	/** So many judges mark the team on the ice; returns its name. */
	String send(DayEvent event, int segment, int judges) throws Exception {
		JsonNode task = read(send("GET", "/api/judge/table", "", event.tokens.get(0)));
		List<Callable<Long>> sendings = new ArrayList<>();
		for (int judge = 0; judge < judges; judge++) {
			String card = event.sent.next(segment, task, judge);
			String token = event.tokens.get(judge);
			String id = UUID.randomUUID().toString();
			sendings.add(() -> {
				long start = System.nanoTime();
				send("PUT", event.sent.path() + id, card, token);
				this.acknowledged.put(id, event.sent.kept(card));
				return System.nanoTime() - start;
			});
		}
		for (Future<Long> sending : this.tablets.invokeAll(sendings)) {
			this.cards.add(sending.get());
		}
		return task.get("now").get("team").asString();
	}

	/** The technical panel calls one element after the other and reads the list back. */
	private void call(DayEvent event, int segment) throws Exception {
		String desk = "/desk/technical/" + event.ids.get(segment);
		String performance = read(send("GET", "/api/judge/table", "", event.tokens.get(0))).get("now").get("performance").asString();
		for (int seen = 0; seen < SentPoints.CODES.size(); seen++) {
			act(Role.TECHNICAL, desk, "#find", Map.of("performance", performance, "sequence", String.valueOf(seen), "act", "CALL",
					"value", SentPoints.CODES.get(seen)));
		}
		act(Role.TECHNICAL, desk + "/read-back", "form[action$=/authorisation]", Map.of());
	}

	/** As a tablet does: again until it is taken. */
	String send(String method, String path, String body, String token) throws InterruptedException {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + this.port + path))
			.timeout(Duration.ofSeconds(10))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (!token.isEmpty()) {
			request.header("Authorization", "Bearer " + token);
		}
		while (true) {
			try {
				HttpResponse<String> answer = this.http.send(request.build(), HttpResponse.BodyHandlers.ofString());
				if (answer.statusCode() < 300) {
					return answer.body();
				}
				if (answer.statusCode() < 500) {
					throw new AssertionError(path + " answered " + answer.statusCode() + ": " + answer.body());
				}
			}
			catch (IOException ex) {
				System.out.println(path + ": " + ex);
			}
			if (token.isEmpty() && method.equals("GET")) {
				// Asked as anybody, of whom there is a crowd.
				TimeUnit.MILLISECONDS.sleep(300);
			}
			else {
				rest();
			}
		}
	}

	/** Read JSON. */
	static JsonNode read(String json) {
		return JsonMapper.shared().readTree(json);
	}

}
