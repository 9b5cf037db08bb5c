package rimebook.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.accounts.Role;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

/**
 * Whether the crew waits behind a crowd. Each node of the service has 512 MiB of heap; pages with a
 * stream and pages that poll follow one segment from this process, on the same machine
 * and its cores, and fetch what moved as the script of a page does. Meanwhile a referee
 * calls and closes a team every twenty seconds, which all of them then fetch, and nine judges
 * send and change their cards all that time. Everything stays on this machine's loopback
 * addresses and ends after the time given.
 *
 * <p>
 * Arguments: {@code h2}, {@code postgres} or {@code nodes}, which are two on
 * PostgreSQL behind nginx; then the numbers of polling pages (20000), of streams (2000)
 * and of seconds (180). Each page needs an open file here and in the
 * service: {@code ulimit -n}.
 */
public final class Crowd {

	private static final int TEAMS = 60;

	private static final int JUDGES = 9;

	/** How often each judge changes a card; more than anybody does. */
	private static final int VERSIONS = 8;

	/** From one close to the next, in milliseconds: the demo’s pace, more than ten times life’s. */
	private static final int PACE = 20_000;

	/** The same in the first minute, by which a service on its way for hours is made up. */
	private static final int WARMING_PACE = 2000;

	private static final Pattern WAIT = Pattern.compile("Rink-Wait: (\\d+)");

	private static final Pattern TAG = Pattern.compile("ETag: (\\S+)");

	private static final Pattern VERSION = Pattern.compile("\"version\":(\\d+)");

	private static final Pattern WITHIN = Pattern.compile("\"within\":(\\d+)");

	private final Cluster service;

	private final Random random = new Random(20270213);

	private final Queue<Long> acknowledged = new ConcurrentLinkedQueue<>();

	private final Queue<Long> closed = new ConcurrentLinkedQueue<>();

	private final List<Long> onStreams = new ArrayList<>();

	private final List<Long> onPolls = new ArrayList<>();

	/** Everybody who follows, with the newest standing on its screen. */
	private final List<int[]> screens = new ArrayList<>();

	/** The newest standing, and when its close began. */
	private volatile int version;

	private volatile long closeBegan;

	private String referee = "";

	private String segment = "";

	private String competition = "";

	private String page = "";

	private List<String> codes = List.of();

	private int polls;

	private int refused;

	private int fetched;

	private int open;

	private int signals;

	private int shown;

	private volatile int pace = WARMING_PACE;

	private volatile boolean over;

	private Crowd(Cluster service) {
		this.service = service;
	}

	public static void main(String[] arguments) throws Exception {
		int pollers = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 20_000;
		int streams = (arguments.length > 2) ? Integer.parseInt(arguments[2]) : 2000;
		int seconds = (arguments.length > 3) ? Integer.parseInt(arguments[3]) : 180;
		new Crowd(Cluster.named((arguments.length > 0) ? arguments[0] : "h2", "crowd")).run(pollers, streams,
				Math.min(seconds, 600));
		System.exit(0);
	}

	private void run(int pollers, int streams, int seconds) throws Exception {
		prepare();
		this.service.start();
		Thread crew = new Thread(this::judge, "crew");
		crew.setDaemon(true);
		crew.start();
		Loopback.stepBack();
		try {
			measure("nobody follows, cold", 0, 0, Math.min(60, seconds / 5));
			this.pace = PACE;
			measure("nobody follows", 0, 0, Math.min(60, seconds / 5));
			weigh(streams);
			measure(pollers + " pages poll, " + streams + " have a stream", pollers, streams, seconds);
		}
		finally {
			this.over = true;
			this.service.close();
		}
	}

	/** What a stream holds of the heap. */
	private void weigh(int streams) throws Exception {
		long before = this.service.heapInUse();
		Loopback crowd = new Loopback(this.service.port());
		gather(crowd, 0, streams);
		crowd.runUntil(System.nanoTime() + 15_000_000_000L);
		int followers = this.open;
		System.out.printf("%d streams: %d bytes of heap each%n", followers,
				(this.service.heapInUse() - before) / Math.max(1, followers));
		crowd.close();
		this.open = 0;
	}

	private void prepare() throws Exception {
		try (ConfigurableApplicationContext context = this.service.within()) {
			this.referee = Crew.add(context, Role.REFEREE);
			SmallCompetition made = SmallCompetition.running(context, TEAMS, JUDGES);
			this.segment = made.open(1).toString();
			context.getBean(Panels.class).issueCodes(made.event().id(), SmallCompetition.REFEREE);
			this.competition = "/follow/" + made.competition().slug();
			this.page = this.competition + "/" + made.event().slug() + "/" + made.event().segments().get(0).slug();
			this.codes = made.seats().stream().map(SeatView::code).toList();
		}
	}

	private void measure(String what, int pollers, int streams, int seconds) throws Exception {
		this.screens.clear();
		Loopback crowd = new Loopback(this.service.port());
		gather(crowd, pollers, streams);
		crowd.runUntil(System.nanoTime() + ((pollers > 0) ? 60 : 1) * 1_000_000_000L);
		forget();
		crowd.runUntil(System.nanoTime() + seconds * 1_000_000_000L);
		System.out.printf(
				"%s, %d s: %d polls and %d fetches answered, %d turned away, %d signals, %d of them with what"
						+ " differs, %d streams open, %d connections broke%n",
				what, seconds, this.polls, this.fetched, this.refused, this.signals, this.shown, this.open,
				crowd.failures());
		print("card to acknowledged", this.acknowledged);
		print("close to answered", this.closed);
		print("close to screen, stream", this.onStreams);
		print("close to screen, polling", this.onPolls);
		if (!this.screens.isEmpty()) {
			// What is closed in the last seconds is on its way.
			int atLeast = this.version - 1;
			System.out.printf("  %d followers, %d of them without a standing that the others have%n", this.screens.size(),
					this.screens.stream().filter((screen) -> screen[0] < atLeast).count());
		}
		System.out.printf("  heap in use %d MiB after a full collection%n", this.service.heapInUse() / 1024 / 1024);
		crowd.close();
	}

	private void forget() {
		this.polls = 0;
		this.fetched = 0;
		this.refused = 0;
		this.signals = 0;
		this.shown = 0;
		this.acknowledged.clear();
		this.closed.clear();
		this.onStreams.clear();
		this.onPolls.clear();
	}

	private static void print(String what, Collection<Long> nanos) {
		List<Long> sorted = nanos.stream().sorted().toList();
		if (!sorted.isEmpty()) {
			System.out.printf("  %-26s n %7d   p50 %7.1f ms   p99 %7.1f ms   most %7.1f ms%n", what, sorted.size(),
					sorted.get(sorted.size() / 2) / 1e6, sorted.get(sorted.size() * 99 / 100) / 1e6,
					sorted.get(sorted.size() - 1) / 1e6);
		}
	}

	private void gather(Loopback crowd, int pollers, int streams) {
		for (int i = 0; i < streams; i++) {
			crowd.after(this.random.nextInt(8000), () -> follow(crowd));
		}
		for (int i = 0; i < pollers; i++) {
			Poller poller = new Poller(crowd);
			crowd.after(this.random.nextInt(10_000), poller::look);
		}
	}

	private void follow(Loopback crowd) {
		this.open++;
		int[] within = { 0 };
		int[] screen = { 0 };
		this.screens.add(screen);
		boolean[] begun = { false };
		boolean[] part = { false };
		String[] before = { "" };
		crowd.get(this.competition + "/signals?page=" + this.page, "Accept-Encoding: gzip\r\n", (piece) -> {
			// What arrives may be cut anywhere, also in the middle of a signal, which is then heard with the next piece.
			String heard = before[0] + (begun[0] ? piece.substring(Loopback.STREAM.length()) : piece);
			int begins = heard.lastIndexOf("event: moved");
			boolean whole = begins < 0 || heard.indexOf("\n\n", begins) > 0;
			before[0] = whole ? heard.substring(heard.length() - Math.min(12, heard.length())) : heard;
			if (!whole) {
				return;
			}
			// Signals stand in the stream as they are, behind what differs, which is
			// compressed.
			// A sign of life may follow it at once.
			String word = (begins < 0) ? "" : heard.substring(begins);
			Matcher spread = WITHIN.matcher(heard.substring(Math.max(0, heard.lastIndexOf("event: "))));
			part[0] |= heard.contains("event: part");
			within[0] = spread.find() ? Integer.parseInt(spread.group(1)) : within[0];
			if (begins >= 0) {
				int told = newest(begun[0] ? word : heard);
				if (begun[0] && part[0]) {
					this.signals++;
					this.shown++;
					see(told, screen, this.onStreams);
				}
				else if (begun[0]) {
					this.signals++;
					crowd.after(this.random.nextInt(within[0] + 1), () -> fetch(crowd, told, screen, this.onStreams));
				}
				else {
					screen[0] = told;
				}
				begun[0] = true;
				part[0] = false;
			}
		}, (answer) -> {
			this.open--;
			this.screens.remove(screen);
			if (answer.startsWith("HTTP/1.1 503")) {
				new Poller(crowd).look();
			}
		});
	}

	private static int newest(String told) {
		return VERSION.matcher(told).results().mapToInt((each) -> Integer.parseInt(each.group(1))).max().orElse(0);
	}

	private void fetch(Loopback crowd, int told, int[] screen, List<Long> times) {
		crowd.get(this.page + "?part=live&moment=" + this.random.nextInt(100),
				"Accept-Encoding: gzip\r\nConnection: close\r\n", (heard) -> {
				}, (answer) -> count(answer, " 200", () -> {
					this.fetched++;
					see(told, screen, times);
				}));
	}

	private void see(int told, int[] screen, List<Long> times) {
		if (told > screen[0] && told == this.version) {
			times.add(System.nanoTime() - this.closeBegan);
		}
		screen[0] = Math.max(screen[0], told);
	}

	private void count(String answer, String status, Runnable good) {
		if (answer.startsWith("HTTP/1.1" + status)) {
			good.run();
		}
		else {
			this.refused++;
		}
	}

	/** A page without a stream. */
	private final class Poller {

		private final Loopback crowd;

		private final int[] screen = { 0 };

		private String tag = "";

		private Poller(Loopback crowd) {
			this.crowd = crowd;
			Crowd.this.screens.add(this.screen);
		}

		void look() {
			String known = this.tag.isEmpty() ? "" : "If-None-Match: " + this.tag + "\r\n";
			// The service ends it by itself, what stands before two nodes does not.
			this.crowd.get(Crowd.this.competition + "/moments", known + "Connection: close\r\n", (heard) -> {
			}, this::seen);
		}

		private void seen(String answer) {
			if (answer.startsWith("HTTP/1.1 200") || answer.startsWith("HTTP/1.1 304")) {
				Crowd.this.polls++;
			}
			else {
				Crowd.this.refused++;
			}
			if (answer.startsWith("HTTP/1.1 200")) {
				boolean first = this.tag.isEmpty();
				Matcher named = TAG.matcher(answer);
				this.tag = named.find() ? named.group(1) : "";
				if (first) {
					this.screen[0] = newest(answer);
				}
				else {
					fetch(this.crowd, newest(answer), this.screen, Crowd.this.onPolls);
				}
			}
			Matcher told = WAIT.matcher(answer);
			int wait = told.find() ? Integer.parseInt(told.group(1)) : 5;
			this.crowd.after((long) (wait * 1000 * (0.8 + 0.4 * Crowd.this.random.nextDouble())), this::look);
		}

	}

	/** Call, send, close, until interrupted or all teams have skated. */
	private void judge() {
		try {
			HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
			List<String> tokens = new ArrayList<>();
			for (String code : this.codes) {
				tokens.add(text(http, "POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}", "")
					.replaceAll("(?s).*\"token\":\"([^\"]+)\".*", "$1"));
			}
			Visitor stand = Visitor.signedIn(this.service.port(), this.referee, Crew.PASSWORD);
			while (!this.over) {
				skate(http, stand, tokens);
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
		catch (Exception ex) {
			if (!this.over) {
				System.out.println("The crew stopped: " + ex);
			}
		}
	}

	/** Some versions of each card, then the next team. */
	private void skate(HttpClient http, Visitor stand, List<String> tokens) throws Exception {
		String path = "/desk/stand/" + this.segment;
		stand.open(path).press("form[action$='/call']");
		String performance = text(http, "GET", "/api/judge/table", "", tokens.get(0))
			.replaceAll("(?s).*\"now\":\\{\"performance\":\"([^\"]+)\".*", "$1");
		for (int sequence = 1; sequence <= VERSIONS; sequence++) {
			for (String token : tokens) {
				String body = "{\"performance\":\"%s\",\"sequence\":%d,\"first\":5.%d,\"second\":4.%d}"
					.formatted(performance, sequence, this.random.nextInt(10), this.random.nextInt(10));
				long start = System.nanoTime();
				text(http, "PUT", "/api/cards/" + UUID.randomUUID(), body, token);
				this.acknowledged.add(System.nanoTime() - start);
				Thread.sleep(Math.max(0, (this.pace - rest()) / VERSIONS / JUDGES - (System.nanoTime() - start) / 1_000_000));
			}
		}
		Visitor.Page ready = stand.open(path);
		long start = System.nanoTime();
		this.closeBegan = start;
		this.version++;
		Visitor.Page answered = ready.press("form[action$='/close']");
		if (answered.status() != 200 || answered.document().selectFirst("form[action$='/close']") != null) {
			// Counted all the same, every follower would seem to lack what there is not.
			this.version--;
			System.out.println("A team was not closed: " + answered.status());
			return;
		}
		this.closed.add(System.nanoTime() - start);
		// Called at once, the next team would have everybody fetch again while they still fetch this.
		Thread.sleep(rest());
	}

	/** How long the ice is empty between two teams, a fifth of their pace; in life it is half a minute and more. */
	private int rest() {
		return this.pace / 5;
	}

	private String text(HttpClient http, String method, String path, String body, String token)
			throws IOException, InterruptedException {
		HttpRequest.Builder request = HttpRequest
			.newBuilder(URI.create("http://127.0.0.1:" + this.service.port() + path))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (!token.isEmpty()) {
			request.header("Authorization", "Bearer " + token);
		}
		HttpResponse<String> answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
		if (answer.statusCode() != 200) {
			throw new IOException(path + ": " + answer.statusCode() + " " + answer.body());
		}
		return answer.body();
	}

}
