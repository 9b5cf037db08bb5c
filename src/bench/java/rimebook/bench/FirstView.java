package rimebook.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.testsupport.Chromium;
import rimebook.testsupport.SmallCompetition;

/**
 * What a standing costs whoever opens it: of 30 teams and nine judges, all but the last few
 * marked, in placement and in points judging, in Chromium with an empty cache, on a narrow
 * and a wide screen. Printed are the bytes over the line with all that the page fetches, but
 * for the stream of signals; the same when the page is opened again; of a refresh when a team
 * is called and when its cards are closed; when the largest part was drawn, and how much
 * moved by itself. The service is asked just after it started, and again when it is warm.
 *
 * <p>
 * Arguments: {@code h2}, {@code postgres} or {@code nodes}, then the number of rounds (5).
 */
public final class FirstView {

	private static final int TEAMS = 30;

	private static final int JUDGES = 9;

	private static final List<Integer> WIDTHS = List.of(390, 1440);

	/** How long a page is looked at; it is never without a request, having a stream. */
	private static final int LOOK = 2000;

	private static final String OBSERVE = """
			window.largest = 0;
			window.moved = 0;
			new PerformanceObserver((list) => list.getEntries().forEach((entry) => window.largest = entry.startTime))
				.observe({ type: "largest-contentful-paint", buffered: true });
			new PerformanceObserver((list) => list.getEntries().forEach((entry) => window.moved += entry.hadRecentInput ? 0 : entry.value))
				.observe({ type: "layout-shift", buffered: true });
			""";

	private final Map<String, List<Double>> figures = new LinkedHashMap<>();

	private final List<DayEvent> events = new ArrayList<>();

	private final Cluster service;

	private final int rounds;

	private DayDesk desk;

	private FirstView(Cluster service, int rounds) {
		this.service = service;
		this.rounds = rounds;
	}

	public static void main(String[] arguments) throws Exception {
		Cluster service = Cluster.named((arguments.length > 0) ? arguments[0] : "h2", "first-view");
		new FirstView(service, (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 5).run();
		System.exit(0);
	}

	private void run() throws Exception {
		prepare();
		try (this.service) {
			this.service.start();
			for (DayEvent event : this.events) {
				for (int width : WIDTHS) {
					look("cold", event, width, true);
				}
			}
			warm();
			for (int round = 0; round < this.rounds; round++) {
				for (DayEvent event : this.events) {
					for (int width : WIDTHS) {
						look("warm", event, width, false);
					}
				}
			}
			this.desk.begin(this.service.port(), this.events);
			for (DayEvent event : this.events) {
				refresh(event);
			}
		}
		this.figures.forEach((what, values) -> {
			List<Double> sorted = values.stream().sorted().toList();
			System.out.printf("%-52s n %3d   median %9.3f   worst %9.3f%n", what, sorted.size(), sorted.get(sorted.size() / 2),
					sorted.get(sorted.size() - 1));
		});
	}

	private void prepare() {
		try (ConfigurableApplicationContext context = this.service.within()) {
			this.desk = new DayDesk(context, Role.REFEREE, Role.TECHNICAL);
			DraftEvent senior = new DraftEvent("Senior",
					DraftEvent.Judging.byPoints(JUDGES, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
					List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()));
			List<DraftEvent> drafts = List.of(CompetitionFixtures.anEvent("Junior", JUDGES), senior);
			for (SmallCompetition made : SmallCompetition.running(context, TEAMS, drafts)) {
				made.open(1);
				made.skateRest(1);
				made.open(2);
				for (int team = 0; team < TEAMS - this.rounds; team++) {
					made.skateNext(2);
				}
				this.events.add(new DayEvent(context, made, new Random(20270213)));
			}
		}
	}

	/** As if people had looked for a while. */
	private void warm() throws IOException, InterruptedException {
		HttpClient http = HttpClient.newHttpClient();
		for (DayEvent event : this.events) {
			HttpRequest request = HttpRequest.newBuilder(URI.create(address(event))).header("Accept-Encoding", "gzip").build();
			for (int i = 0; i < 2000; i++) {
				http.send(request, HttpResponse.BodyHandlers.discarding());
			}
		}
	}

	private String address(DayEvent event) {
		return "http://localhost:" + this.service.port() + event.page(1);
	}

	/** Open the page with an empty cache, and then once more. */
	private void look(String when, DayEvent event, int width, boolean inFull) {
		String what = when + " " + event.name + " " + width + ", ";
		try (BrowserContext context = narrow(width)) {
			Page page = context.newPage();
			Line line = new Line(page);
			page.addInitScript(OBSERVE);
			page.navigate(address(event));
			page.waitForTimeout(LOOK);
			note(what + "first view, KiB", line.bytes() / 1024.0);
			note(what + "largest part drawn after, ms", number(page, "window.largest"));
			note(what + "moved", number(page, "window.moved"));
			if (inFull) {
				line.print(what + "first view");
			}
			line.answers.clear();
			page.navigate(address(event));
			page.waitForTimeout(LOOK);
			note(what + "opened again, KiB", line.bytes() / 1024.0);
			if (inFull) {
				line.print(what + "opened again");
			}
		}
	}

	private static BrowserContext narrow(int width) {
		return Chromium.browser().newContext(new Browser.NewContextOptions().setViewportSize(width, 844));
	}

	/** Let the last teams be called and their cards be closed while somebody looks. */
	private void refresh(DayEvent event) throws Exception {
		String stand = "/desk/stand/" + event.ids.get(1);
		for (int round = 0; round < this.rounds; round++) {
			int width = WIDTHS.get(round % WIDTHS.size());
			try (BrowserContext context = narrow(width)) {
				Page page = context.newPage();
				Line line = new Line(page);
				page.addInitScript(OBSERVE);
				page.navigate(address(event));
				page.waitForTimeout(LOOK);
				String what = "refresh " + event.name + " " + width + ", ";
				after(what + "called", page, line, () -> this.desk.act(Role.REFEREE, stand, "form[action$=/call]", Map.of()));
				this.desk.mark(event, 1);
				after(what + "closed", page, line, () -> this.desk.act(Role.REFEREE, stand, "form[action$=/close]", Map.of()));
			}
		}
	}

	private void after(String what, Page page, Line line, Act act) throws Exception {
		line.answers.clear();
		double before = number(page, "window.moved");
		String seen = seen(page);
		String since = (String) page.evaluate("document.getElementById('live').dataset.tag");
		line.streamed = 0;
		act.run();
		for (int i = 0; i < 100 && seen(page).equals(seen); i++) {
			page.waitForTimeout(100);
		}
		if (seen(page).equals(seen)) {
			throw new IllegalStateException("The page did not follow");
		}
		page.waitForTimeout(LOOK);
		note(what + ", KiB fetched", line.bytes() / 1024.0);
		note(what + ", KiB told on the stream", line.streamed / 1024.0);
		note(what + ", KiB sent to a page without a stream", sent(page.url() + "?part=live&since=" + since) / 1024.0);
		note(what + ", moved", number(page, "window.moved") - before);
	}

	/** The body, compressed. */
	private static int sent(String address) throws IOException, InterruptedException {
		HttpRequest request = HttpRequest.newBuilder(URI.create(address)).header("Accept-Encoding", "gzip").build();
		return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray()).body().length;
	}

	private static String seen(Page page) {
		return (String) page.evaluate("document.getElementById('live').dataset.seen");
	}

	private static double number(Page page, String expression) {
		return ((Number) page.evaluate(expression)).doubleValue();
	}

	private void note(String what, double value) {
		this.figures.computeIfAbsent(what, (key) -> new ArrayList<>()).add(value);
	}

	/** What comes over the line to a page, heads included; what was in the cache is none. */
	private static final class Line {

		private final Map<String, String> asked = new ConcurrentHashMap<>();

		private final List<Answer> answers = new ArrayList<>();

		/** What a stream brought; signs of life are some of it. */
		private long streamed;

		Line(Page page) {
			CDPSession session = page.context().newCDPSession(page);
			session.on("Network.requestWillBeSent", (event) -> this.asked.put(id(event),
					event.getAsJsonObject("request").get("url").getAsString()));
			session.on("Network.loadingFinished", (event) -> {
				String path = this.asked.getOrDefault(id(event), "?").replaceFirst("^https?://[^/]+", "");
				if (!isStream(path)) {
					this.answers.add(new Answer(path, event.get("encodedDataLength").getAsLong()));
				}
			});
			session.on("Network.dataReceived", (event) -> {
				if (isStream(this.asked.getOrDefault(id(event), "?"))) {
					this.streamed += event.get("encodedDataLength").getAsLong();
				}
			});
			session.send("Network.enable");
		}

		private static String id(JsonObject event) {
			return event.get("requestId").getAsString();
		}

		private static boolean isStream(String address) {
			return address.contains("/signals");
		}

		void print(String what) {
			System.out.println(what + ", bytes of each answer:");
			this.answers.forEach((answer) -> System.out.printf("  %7d %s%n", answer.bytes(), answer.path()));
		}

		long bytes() {
			return this.answers.stream().mapToLong(Answer::bytes).sum();
		}

	}

	private record Answer(String path, long bytes) {
	}

	private interface Act {

		void run() throws Exception;

	}

}
