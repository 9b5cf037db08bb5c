package rimebook.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.jsoup.nodes.Element;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.accounts.Role;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

/**
 * How long people wait for each other: from a judge's send to the referee's stand showing
 * the card, and from the referee's closing to the standing on every follower's page. The
 * service is a process of its own; judges, the stand, which looks as often as in a
 * browser, and the followers, who open the page, hear of a change and fetch the part that
 * moved, speak HTTP to it from this one, on the same machine. What a browser needs to draw is left
 * out.
 *
 * <p>
 * Arguments: {@code h2} or {@code postgres}, then the numbers of followers (200) and of
 * segments of 20 teams (10), then {@code starts} or {@code runs} for a rehearsal beside
 * it: one that is copied and started while the first cards come, or one whose simulated
 * panel marks as fast as it can.
 */
public final class Latency {

	private static final int TEAMS = 20;

	private static final int JUDGES = 5;

	private static final Pattern WITHIN = Pattern.compile("\"within\":(\\d+)");

	/** The period of the stand's looks. */
	private static final long LOOK = 700;

	private final ServiceProcess service;

	private final int followers;

	private final HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

	private final List<Day> days = new ArrayList<>();

	private final Queue<Long> acknowledged = new ConcurrentLinkedQueue<>();

	private final Queue<Long> toStand = new ConcurrentLinkedQueue<>();

	private final Queue<Long> toFollower = new ConcurrentLinkedQueue<>();

	private final Queue<Long> toAnswer = new ConcurrentLinkedQueue<>();

	/** How often a follower was told to come later. */
	private final LongAdder refused = new LongAdder();

	private final Random random = new Random(20270213);

	private String referee = "";

	private Latency(List<String> database, int followers) {
		this.service = new ServiceProcess(database, Path.of("target", "latency.log"));
		this.followers = followers;
	}

	public static void main(String[] arguments) throws Exception {
		boolean postgres = arguments.length > 0 && arguments[0].equals("postgres");
		int followers = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 200;
		int segments = (arguments.length > 2) ? Integer.parseInt(arguments[2]) : 10;
		new Latency(postgres ? PostgresDatabase.create().asProperties() : ServiceProcess.onH2(), followers)
			.run(segments, (arguments.length > 3) ? arguments[3] : "");
		System.exit(0);
	}

	private void run(int segments, String rehearsal) throws Exception {
		prepare(segments);
		this.service.start();
		Visitor stand = Visitor.signedIn(this.service.port(), this.referee, Crew.PASSWORD);
		if (!rehearsal.isEmpty()) {
			rehearse(stand, rehearsal.equals("runs"));
		}
		for (Day day : this.days) {
			skate(day, stand);
		}
		if (!rehearsal.isEmpty()) {
			System.out.println("The rehearsal at the end: " + stand.open("/desk/rehearsal").document().select(".state").text());
		}
		this.service.kill();
		System.out.printf("%d closes, %d followers, %d judges; a follower was told to come later %d times%n",
				this.toAnswer.size(), this.followers, JUDGES, this.refused.sum());
		print("send to acknowledged", this.acknowledged);
		print("send to shown on the stand", this.toStand);
		print("close to answered", this.toAnswer);
		print("close to a follower's page", this.toFollower);
	}

	/** Begin one; where it is to run, wait for it and let its panel do everything. */
	private void rehearse(Visitor referee, boolean runs) throws InterruptedException {
		referee.open("/desk/rehearsal").submit("form[action=/desk/rehearsal]", Map.of("anyway", "true"));
		while (runs) {
			Visitor.Page page = referee.open("/desk/rehearsal");
			Element code = page.document().selectFirst("strong.code");
			if (code != null) {
				int port = URI.create(page.document().select(".facts a").attr("href")).getPort();
				Visitor.signedIn(port, this.referee, code.text())
					.open("/desk/rehearsal")
					.submit("form.sheet", Map.of("mode", "EVERYTHING", "pace", "0"));
				return;
			}
			TimeUnit.SECONDS.sleep(1);
		}
	}

	private static void print(String what, Queue<Long> nanos) {
		List<Long> sorted = nanos.stream().sorted().toList();
		System.out.printf("%-28s n %6d   p50 %7.1f ms   p99 %7.1f ms   most %7.1f ms%n", what, sorted.size(),
				sorted.get(sorted.size() / 2) / 1e6, sorted.get(sorted.size() * 99 / 100) / 1e6,
				sorted.get(sorted.size() - 1) / 1e6);
	}

	private void prepare(int segments) throws Exception {
		try (ConfigurableApplicationContext context = this.service.within()) {
			this.referee = Crew.add(context, Role.REFEREE);
			for (int i = 0; i < segments; i++) {
				SmallCompetition made = SmallCompetition.running(context, TEAMS, JUDGES);
				String segment = made.open(1).toString();
				context.getBean(Panels.class).issueCodes(made.event().id(), SmallCompetition.REFEREE);
				this.days.add(new Day(segment, "/follow/" + made.competition().slug(),
						made.event().slug() + "/" + made.event().segments().get(0).slug(),
						made.seats().stream().map(SeatView::code).toList()));
			}
		}
	}

	/** A segment: where it is followed, and the codes of its seats. */
	private record Day(String segment, String competition, String page, List<String> codes) {
	}

	private void skate(Day day, Visitor stand) throws Exception {
		List<String> tokens = new ArrayList<>();
		for (String code : day.codes()) {
			String answer = text("POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}", "");
			tokens.add(answer.replaceAll("(?s).*\"token\":\"([^\"]+)\".*", "$1"));
		}
		Audience audience = new Audience(day);
		audience.gather();
		String path = "/desk/stand/" + day.segment();
		for (int number = 1; number <= TEAMS; number++) {
			stand.open(path).press("form[action$='/call']");
			String performance = text("GET", "/api/judge/table", "", tokens.get(0))
				.replaceAll("(?s).*\"now\":\\{\"performance\":\"([^\"]+)\".*", "$1");
			mark(performance, tokens.get(0), new Look(stand, path + "/live?onIce=" + performance));
			for (String token : tokens.subList(1, tokens.size())) {
				mark(performance, token, null);
			}
			Visitor.Page ready = stand.open(path);
			audience.expect(number);
			long start = System.nanoTime();
			ready.press("form[action$='/close']");
			this.toAnswer.add(System.nanoTime() - start);
			audience.await(start);
		}
		audience.leave();
	}

	private void mark(String performance, String token, Look look) throws Exception {
		String body = "{\"performance\":\"%s\",\"sequence\":1,\"first\":5.%d,\"second\":4.%d}".formatted(performance,
				this.random.nextInt(10), this.random.nextInt(10));
		long untilLook = this.random.nextInt((int) LOOK);
		long start = System.nanoTime();
		text("PUT", "/api/cards/" + UUID.randomUUID(), body, token);
		this.acknowledged.add(System.nanoTime() - start);
		if (look != null) {
			TimeUnit.NANOSECONDS.sleep(Math.max(0, start + untilLook * 1_000_000 - System.nanoTime()));
			while (!look.shows()) {
				TimeUnit.MILLISECONDS.sleep(LOOK);
			}
			this.toStand.add(System.nanoTime() - start);
		}
	}

	/** What the stand's page asks for each second. */
	private record Look(Visitor stand, String path) {

		boolean shows() {
			return !this.stand.open(this.path).document().select(".seat-list li.in").isEmpty();
		}

	}

	private String text(String method, String path, String body, String token)
			throws IOException, InterruptedException {
		HttpRequest.Builder request = request(path).header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (!token.isEmpty()) {
			request.header("Authorization", "Bearer " + token);
		}
		HttpResponse<String> answer = this.http.send(request.build(), HttpResponse.BodyHandlers.ofString());
		if (answer.statusCode() != 200) {
			throw new IOException(path + ": " + answer.statusCode() + " " + answer.body());
		}
		return answer.body();
	}

	private HttpRequest.Builder request(String path) {
		return HttpRequest.newBuilder(URI.create("http://localhost:" + this.service.port() + path));
	}

	/** Everybody who follows one segment. */
	private final class Audience {

		private final Day day;

		private final List<Stream<String>> streams = new ArrayList<>();

		private volatile int expected;

		private volatile CountDownLatch waiting = new CountDownLatch(0);

		private final Queue<Long> arrivals = new ConcurrentLinkedQueue<>();

		Audience(Day day) {
			this.day = day;
		}

		void gather() throws Exception {
			for (int i = 0; i < Latency.this.followers; i++) {
				send("");
				Stream<String> lines = Latency.this.http
					.send(request(this.day.competition() + "/signals").build(), HttpResponse.BodyHandlers.ofLines())
					.body();
				this.streams.add(lines);
				Thread follower = new Thread(() -> follow(lines), "follower-" + i);
				follower.setDaemon(true);
				follower.start();
			}
		}

		void leave() {
			this.streams.forEach(Stream::close);
		}

		void expect(int version) {
			this.waiting = new CountDownLatch(Latency.this.followers);
			this.expected = version;
		}

		void await(long start) throws InterruptedException {
			if (!this.waiting.await(30, TimeUnit.SECONDS)) {
				throw new IllegalStateException(this.waiting.getCount() + " followers never saw the standing");
			}
			this.arrivals.forEach((arrival) -> Latency.this.toFollower.add(arrival - start));
			this.arrivals.clear();
		}

		/**
		 * Each follower fetches a standing once, as the page does: within the time that
		 * the service told it to spread over, and again a while after a refusal. That a
		 * team is called is heard, too.
		 */
		private void follow(Stream<String> lines) {
			Set<Integer> fetched = new HashSet<>();
			int[] within = { 0 };
			try {
				lines.filter((line) -> line.startsWith("data:")).forEach((line) -> {
					Matcher spread = WITHIN.matcher(line);
					within[0] = spread.find() ? Integer.parseInt(spread.group(1)) : within[0];
					if (line.contains(this.day.segment()) && line.contains("\"version\":" + this.expected + ",")
							&& fetched.add(this.expected)) {
						fetch(line, within[0]);
					}
				});
			}
			catch (UncheckedIOException left) {
				// The audience has left.
			}
		}

		private void fetch(String signal, int within) {
			String moment = signal.replaceAll(".*\"moment\":(\\d+).*", "$1");
			try {
				TimeUnit.MILLISECONDS.sleep(ThreadLocalRandom.current().nextInt(within + 1));
				while (send("?part=live&moment=" + moment) != 200) {
					Latency.this.refused.increment();
					TimeUnit.MILLISECONDS.sleep(ThreadLocalRandom.current().nextInt(3000, 5000));
				}
				this.arrivals.add(System.nanoTime());
				this.waiting.countDown();
			}
			catch (IOException ex) {
				throw new IllegalStateException(ex);
			}
			catch (InterruptedException ex) {
				Thread.currentThread().interrupt();
			}
		}

		private int send(String query) throws IOException, InterruptedException {
			HttpRequest request = request(this.day.competition() + "/" + this.day.page() + query)
				.header("Accept-Encoding", "gzip")
				.timeout(Duration.ofSeconds(20))
				.build();
			return Latency.this.http.send(request, HttpResponse.BodyHandlers.ofByteArray()).statusCode();
		}

	}

}
