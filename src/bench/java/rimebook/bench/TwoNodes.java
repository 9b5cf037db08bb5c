package rimebook.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.accounts.Role;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.Crew;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

/**
 * Two nodes on one PostgreSQL behind nginx as {@code deploy/nginx} sets it up, while a
 * panel marks and pages follow: one node is killed in the middle, then the other one,
 * and then both are exchanged one after the other as {@code deploy/roll} does. Printed is how
 * long no follower heard anything, how long a standing took to each, what was asked in
 * vain, and whether every acknowledged card is in the database.
 *
 * <p>
 * Arguments: the numbers of pages with a stream (300) and of polling pages (300), and the
 * seconds of each part (20).
 */
public final class TwoNodes {

	private static final int TEAMS = 40;

	private static final int JUDGES = 5;

	private static final Pattern RETRY = Pattern.compile("retry: (\\d+)");

	private static final Pattern VERSION = Pattern.compile("\"version\":(\\d+)");

	private static final Pattern WAIT = Pattern.compile("Rink-Wait: (\\d+)");

	/** Seconds after which a page looks again that looked in vain. */
	private static final double[] LOOK_AGAIN = { 1.5, 3, 5 };

	private static final Pattern STATUS = Pattern.compile("HTTP/1.1 (\\d+)");

	/** Whoever follows is to hear something each second, so that silence can be measured. */
	private final Cluster cluster = Cluster.two("two-nodes", "rimebook.live.heartbeat=1s");

	private final List<ServiceProcess> nodes = this.cluster.nodes();

	private final List<Follower> followers = new ArrayList<>();

	private final Random random = new Random(20270213);

	private final Set<String> acknowledged = new HashSet<>();

	/** When the first and the last stream heard of each version. */
	private final Map<Integer, long[]> heard = new HashMap<>();

	private final Queue<Long> cards = new ConcurrentLinkedQueue<>();

	private final Queue<String> inVain = new ConcurrentLinkedQueue<>();

	private final AtomicInteger desk = new AtomicInteger();

	private final AtomicInteger repeated = new AtomicInteger();

	private String referee = "";

	private String segment = "";

	private String competition = "";

	private List<String> codes = List.of();

	/** The newest version and when its close began. */
	private volatile int version;

	private volatile long closedAt;

	private volatile boolean over;

	private TwoNodes() {
	}

	public static void main(String[] arguments) throws Exception {
		int streams = (arguments.length > 0 && !arguments[0].startsWith(".")) ? Integer.parseInt(arguments[0]) : 300;
		int pollers = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 300;
		int seconds = (arguments.length > 2) ? Integer.parseInt(arguments[2]) : 20;
		new TwoNodes().run(streams, pollers, seconds);
		System.exit(0);
	}

	private void run(int streams, int pollers, int seconds) throws Exception {
		prepare();
		try (this.cluster) {
			this.cluster.start();
			Loopback crowd = new Loopback(this.cluster.port());
			gather(crowd, streams, pollers);
			Thread crew = new Thread(this::judge, "crew");
			crew.setDaemon(true);
			crew.start();
			part("both nodes, cold", crowd, seconds, () -> {
			});
			part("both nodes", crowd, seconds, () -> {
			});
			for (int i = 0; i < 2; i++) {
				ServiceProcess node = this.nodes.get(i);
				part("node " + (i + 1) + " killed", crowd, seconds, node::kill);
				part("node " + (i + 1) + " started again", crowd, seconds, node::start);
			}
			part("each exchanged after the other", crowd, 2 * seconds, () -> {
				for (ServiceProcess node : this.nodes) {
					node.stop();
					node.start();
				}
			});
			this.over = true;
			crew.join(30_000);
			verify();
			crowd.close();
		}
	}

	private void prepare() throws Exception {
		try (ConfigurableApplicationContext context = this.cluster.within()) {
			this.referee = Crew.add(context, Role.REFEREE);
			SmallCompetition made = SmallCompetition.running(context, TEAMS, JUDGES);
			this.segment = made.open(1).toString();
			context.getBean(Panels.class).issueCodes(made.event().id(), SmallCompetition.REFEREE);
			this.competition = "/follow/" + made.competition().slug();
			this.codes = made.seats().stream().map(SeatView::code).toList();
		}
	}

	private void gather(Loopback crowd, int streams, int pollers) {
		for (int i = 0; i < streams + pollers; i++) {
			Follower follower = new Follower(crowd, i < streams);
			this.followers.add(follower);
			crowd.after(this.random.nextInt(3000), follower::begin);
		}
	}

	/** Do something and look for a while at what the followers have of it. */
	private void part(String what, Loopback crowd, int seconds, Act act) throws Exception {
		this.cards.clear();
		this.heard.clear();
		this.inVain.clear();
		this.repeated.set(0);
		int before = this.desk.get();
		int from = this.version;
		this.followers.forEach(Follower::forget);
		Thread acting = new Thread(() -> {
			try {
				act.run();
			}
			catch (Exception ex) {
				System.out.println(what + ": " + ex);
			}
		}, "act");
		acting.start();
		crowd.runUntil(System.nanoTime() + seconds * 1_000_000_000L);
		while (acting.isAlive()) {
			crowd.runUntil(System.nanoTime() + 500_000_000L);
		}
		crowd.runUntil(System.nanoTime() + 6_000_000_000L);
		report(what, this.version - from, this.desk.get() - before);
	}

	private void report(String what, int versions, int pressed) {
		System.out.printf("%s: %d standings, %d buttons pressed, %d cards acknowledged, %d sent again%n", what, versions,
				pressed, this.cards.size(), this.repeated.get());
		print("a stream silent, at most", this.followers.stream().filter((each) -> each.streams).map(Follower::silence).toList());
		print("a polling page silent", this.followers.stream().filter((each) -> !each.streams).map(Follower::silence).toList());
		print("close to heard, stream", this.followers.stream().filter((each) -> each.streams).flatMap((each) -> each.delays.stream()).toList());
		print("from stream to stream", this.heard.values().stream().map((times) -> times[1] - times[0]).toList());
		print("close to heard, polling", this.followers.stream().filter((each) -> !each.streams).flatMap((each) -> each.delays.stream()).toList());
		print("card to acknowledged", List.copyOf(this.cards));
		long behind = this.followers.stream().filter((each) -> each.known < this.version - 1).count();
		System.out.printf("  %d followers do not know the standing before the newest; asked in vain: %s%n", behind,
				this.inVain.isEmpty() ? "nothing" : List.copyOf(this.inVain).subList(0, Math.min(8, this.inVain.size())) + " of " + this.inVain.size());
	}

	private static void print(String what, List<Long> nanos) {
		List<Long> sorted = nanos.stream().sorted().toList();
		if (!sorted.isEmpty()) {
			System.out.printf("  %-26s n %6d   p50 %7.1f ms   p99 %7.1f ms   most %7.1f ms%n", what, sorted.size(),
					sorted.get(sorted.size() / 2) / 1e6, sorted.get(sorted.size() * 99 / 100) / 1e6,
					sorted.get(sorted.size() - 1) / 1e6);
		}
	}

	private void verify() throws SQLException {
		Set<String> present = new HashSet<>();
		try (Connection connection = this.cluster.connect();
				ResultSet rows = connection.createStatement().executeQuery("select id from card_submission")) {
			while (rows.next()) {
				present.add(rows.getString(1));
			}
		}
		long there = this.acknowledged.stream().filter(present::contains).count();
		System.out.printf("acknowledged %d cards, %d of them present, %d rows%n", this.acknowledged.size(), there,
				present.size());
		if (there < this.acknowledged.size()) {
			System.exit(1);
		}
	}

	/** A page that follows as its script does. */
	private final class Follower {

		private final Loopback crowd;

		private final boolean streams;

		private final List<Long> delays = new ArrayList<>();

		private long heardAt;

		private long silence;

		private int known;

		private int retry = 2000;

		private int inVain;

		Follower(Loopback crowd, boolean streams) {
			this.crowd = crowd;
			this.streams = streams;
		}

		void begin() {
			this.heardAt = System.nanoTime();
			if (this.streams) {
				listen();
			}
			else {
				look();
			}
		}

		void forget() {
			this.delays.clear();
			this.silence = 0;
		}

		long silence() {
			return Math.max(this.silence, System.nanoTime() - this.heardAt);
		}

		private void listen() {
			this.crowd.get(TwoNodes.this.competition + "/signals", "Connection: close\r\n", (heard) -> {
				Matcher told = RETRY.matcher(heard);
				this.retry = told.find() ? Integer.parseInt(told.group(1)) : this.retry;
				if (heard.contains("event-stream")) {
					hear(heard, true);
				}
			}, (answer) -> {
				if (answer.isEmpty() || answer.contains("event-stream")) {
					this.crowd.after(this.retry, this::listen);
				}
				else {
					note(answer, "signals");
					look();
				}
			});
		}

		private void look() {
			this.crowd.get(TwoNodes.this.competition + "/moments", "Connection: close\r\n", (heard) -> {
			}, (answer) -> {
				if (answer.startsWith("HTTP/1.1 200")) {
					this.inVain = 0;
					hear(answer, false);
				}
				else {
					note(answer, "moments");
				}
				Matcher told = WAIT.matcher(answer);
				double wait = told.find() ? Integer.parseInt(told.group(1)) : LOOK_AGAIN[Math.min(this.inVain++, 2)];
				if (this.streams && answer.contains("Rink-Streams: open") && TwoNodes.this.random.nextInt(4) == 0) {
					listen();
				}
				else {
					this.crowd.after((long) (wait * 1000 * (0.8 + 0.4 * TwoNodes.this.random.nextDouble())), this::look);
				}
			});
		}

		private void note(String answer, String what) {
			Matcher status = STATUS.matcher(answer);
			TwoNodes.this.inVain.add(what + " " + (status.find() ? status.group(1) : "broken"));
		}

		/**
		 * @param told whether it came by a stream: whoever found no place for one polls
		 */
		private void hear(String text, boolean told) {
			long now = System.nanoTime();
			this.silence = Math.max(this.silence, now - this.heardAt);
			this.heardAt = now;
			Matcher versions = VERSION.matcher(text);
			while (versions.find()) {
				int said = Integer.parseInt(versions.group(1));
				if (said > this.known) {
					this.known = said;
					if (said == TwoNodes.this.version) {
						this.delays.add(now - TwoNodes.this.closedAt);
						if (told) {
							TwoNodes.this.heard.computeIfAbsent(said, (version) -> new long[] { now, now })[1] = now;
						}
					}
				}
			}
		}

	}

	/** Call, send, close, until it is over or all have skated. */
	private void judge() {
		try {
			HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
			List<String> tokens = new ArrayList<>();
			for (String code : this.codes) {
				tokens.add(send(http, "POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}", "")
					.replaceAll("(?s).*\"token\":\"([^\"]+)\".*", "$1"));
			}
			Visitor stand = Visitor.signedIn(this.cluster.port(), this.referee, Crew.PASSWORD);
			for (int team = 1; team <= TEAMS && !this.over; team++) {
				skate(http, stand, tokens);
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
		catch (Exception | AssertionError ex) {
			System.out.println("The crew stopped: " + ex);
		}
	}

	private void skate(HttpClient http, Visitor stand, List<String> tokens) throws Exception {
		String path = "/desk/stand/" + this.segment;
		press(stand, path, "form[action$='/call']");
		String performance = send(http, "GET", "/api/judge/table", "", tokens.get(0))
			.replaceAll("(?s).*\"now\":\\{\"performance\":\"([^\"]+)\".*", "$1");
		for (int sequence = 1; sequence <= 3; sequence++) {
			for (String token : tokens) {
				String id = UUID.randomUUID().toString();
				String body = "{\"performance\":\"%s\",\"sequence\":%d,\"first\":5.%d,\"second\":4.%d}".formatted(performance,
						sequence, this.random.nextInt(10), this.random.nextInt(10));
				long start = System.nanoTime();
				send(http, "PUT", "/api/cards/" + id, body, token);
				this.cards.add(System.nanoTime() - start);
				this.acknowledged.add(id);
				TimeUnit.MILLISECONDS.sleep(200);
			}
		}
		this.version++;
		press(stand, path, "form[action$='/close']");
	}

	/** As a referee does: look, press, and look again if there was no answer. */
	private void press(Visitor stand, String path, String form) throws InterruptedException {
		while (true) {
			try {
				Visitor.Page page = stand.open(path);
				if (page.status() == 200 && page.document().selectFirst(form) == null) {
					return;
				}
				this.closedAt = System.nanoTime();
				int status = (page.status() == 200) ? page.press(form).status() : page.status();
				if (status == 200) {
					this.desk.incrementAndGet();
					return;
				}
				this.inVain.add("stand " + status);
			}
			catch (UncheckedIOException ex) {
				this.inVain.add("stand " + ex.getMessage());
			}
			TimeUnit.MILLISECONDS.sleep(500);
		}
	}

	/** As a tablet does: again until it is answered. */
	private String send(HttpClient http, String method, String path, String body, String token)
			throws InterruptedException {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + this.cluster.port() + path))
			.timeout(Duration.ofSeconds(10))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (!token.isEmpty()) {
			request.header("Authorization", "Bearer " + token);
		}
		while (true) {
			try {
				HttpResponse<String> answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
				if (answer.statusCode() == 200) {
					return answer.body();
				}
				this.inVain.add("tablet " + answer.statusCode());
			}
			catch (IOException ex) {
				this.inVain.add("tablet " + ex.getMessage());
			}
			this.repeated.incrementAndGet();
			TimeUnit.MILLISECONDS.sleep(500);
		}
	}

	private interface Act {

		void run() throws Exception;

	}

}
