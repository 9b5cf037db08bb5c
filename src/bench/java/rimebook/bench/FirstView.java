package rimebook.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.options.LoadState;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.testsupport.Chromium;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

/**
 * What somebody's first look at a standing of 30 teams costs, in placement and in points
 * judging: bytes over the line with everything the page fetches, the largest part's time
 * to be seen, what moved while it was drawn, and the bytes of a refresh.
 */
public final class FirstView {

	private static final int TEAMS = 30;

	private static final int JUDGES = 9;

	private static final String OBSERVE = """
			window.largest = 0; window.moved = 0;
			new PerformanceObserver((list) => list.getEntries().forEach((entry) => window.largest = entry.startTime))
				.observe({ type: "largest-contentful-paint", buffered: true });
			new PerformanceObserver((list) => list.getEntries().forEach((entry) => window.moved += entry.hadRecentInput ? 0 : entry.value))
				.observe({ type: "layout-shift", buffered: true });
			""";

	private FirstView() {
	}

	public static void main(String[] arguments) throws Exception {
		try (ServiceProcess service = new ServiceProcess(ServiceProcess.onH2(), Path.of("target", "first-view.log"), "-Xmx512m")) {
			Map<String, String> pages = new LinkedHashMap<>();
			try (ConfigurableApplicationContext context = service.within()) {
				pages.put("placement", skated(SmallCompetition.running(context, TEAMS, JUDGES)));
				pages.put("points", skated(PointsCompetition.running(context, TEAMS, JUDGES)));
			}
			service.start();
			for (Map.Entry<String, String> page : pages.entrySet()) {
				look(page.getKey(), "http://localhost:" + service.port() + page.getValue());
			}
		}
		System.exit(0);
	}

	private static String skated(SmallCompetition made) {
		made.open(1);
		made.skateRest(1);
		made.open(2);
		made.skateRest(2);
		return "/follow/" + made.competition().slug() + "/" + made.event().slug() + "/"
				+ made.event().segments().get(1).slug();
	}

	/** The best of some looks, each by a browser that knows nothing: others use the machine, too. */
	private static void look(String what, String address) throws Exception {
		double largest = Double.MAX_VALUE;
		double moved = 0;
		long bytes = 0;
		int requests = 0;
		for (int i = 0; i < 5; i++) {
			try (BrowserContext context = Chromium.browser().newContext(new Browser.NewContextOptions().setViewportSize(390, 844))) {
				Page page = context.newPage();
				page.addInitScript(OBSERVE);
				Queue<Request> finished = new ConcurrentLinkedQueue<>();
				page.onRequestFinished(finished::add);
				page.navigate(address);
				page.waitForLoadState(LoadState.LOAD);
				page.waitForTimeout(1500);
				largest = Math.min(largest, number(page, "window.largest"));
				moved = Math.max(moved, number(page, "window.moved"));
				bytes = finished.stream().mapToLong((each) -> each.sizes().responseBodySize + each.sizes().responseHeadersSize).sum();
				requests = finished.size();
			}
		}
		System.out.printf("%-10s first view %.1f KiB in %d answers, heads included; largest paint after %.0f ms at best of 5, shift %.4f at most; "
				+ "page alone %.1f KiB, refresh %.1f KiB%n", what, bytes / 1024.0, requests, largest, moved,
				zipped(address) / 1024.0, zipped(address + "?part=live") / 1024.0);
	}

	private static double number(Page page, String expression) {
		return ((Number) page.evaluate(expression)).doubleValue();
	}

	private static int zipped(String address) throws IOException, InterruptedException {
		HttpRequest request = HttpRequest.newBuilder(URI.create(address)).header("Accept-Encoding", "gzip").build();
		return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray()).body().length;
	}

}
