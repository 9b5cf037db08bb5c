package rimebook.bench;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

/**
 * How long nine tablets wait for the acknowledgement of a card while nothing is copied,
 * and while one copy after another is made at a second place: each tablet sends a card
 * every 200 ms. The rounds take turns, so that a machine that grows warm or slow does so
 * for both.
 *
 * <p>
 * Arguments: seconds of a round (60), number of rounds of each kind (3), skated
 * performances that are in the database before (200).
 */
public final class Copies {

	private static final int SEATS = 9;

	private static final Duration PACE = Duration.ofMillis(200);

	private final HttpClient http = HttpClient.newHttpClient();

	private final Path folder = Files.createTempDirectory("rimebook-copies");

	private final Path stick = Files.createDirectory(this.folder.resolve("stick"));

	private final List<String> seats = new ArrayList<>();

	private final List<Integer> sequences = new ArrayList<>(Collections.nCopies(SEATS, 0));

	private String performance = "";

	private Copies() throws Exception {
	}

	public static void main(String[] arguments) throws Exception {
		new Copies().run(number(arguments, 0, 60), number(arguments, 1, 3), number(arguments, 2, 200));
		System.exit(0);
	}

	private static int number(String[] arguments, int at, int otherwise) {
		return (arguments.length > at) ? Integer.parseInt(arguments[at]) : otherwise;
	}

	private void run(int seconds, int rounds, int skated) throws Exception {
		ServiceProcess plain = service("rimebook.copy.elsewhere=true");
		prepare(plain, skated);
		ServiceProcess copying = service("rimebook.copy.folder=" + this.stick, "rimebook.copy.every=1s",
				"rimebook.copy.look=200ms");
		List<Double> without = new ArrayList<>();
		List<Double> with = new ArrayList<>();
		for (int round = 0; round < rounds; round++) {
			without.addAll(round(plain, seconds));
			with.addAll(round(copying, seconds));
		}
		report("without copies", without);
		report("with copies   ", with);
		try (Stream<Path> files = Files.list(this.stick)) {
			List<Path> copies = files.filter((file) -> file.toString().endsWith(".zip")).sorted().toList();
			System.out.printf("%d copies kept, the newest of %,d bytes%n", copies.size(),
					Files.size(copies.get(copies.size() - 1)));
		}
	}

	private ServiceProcess service(String... settings) {
		List<String> all = new ArrayList<>(List.of("spring.datasource.url=jdbc:h2:file:" + this.folder.resolve("data/rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE"));
		all.addAll(List.of(settings));
		return new ServiceProcess(all, Path.of("target", "copies.log"), "-XX:MaxGCPauseMillis=30");
	}

	private void prepare(ServiceProcess service, int skated) throws Exception {
		List<String> codes = new ArrayList<>();
		try (ConfigurableApplicationContext context = service.within()) {
			for (int done = 0; done < skated; done += 20) {
				SmallCompetition earlier = SmallCompetition.running(context, 20, SEATS);
				earlier.open(1);
				earlier.skateRest(1);
			}
			SmallCompetition day = SmallCompetition.running(context, 2, SEATS);
			day.open(1);
			PerformanceView onIce = day.callNext(1);
			this.performance = onIce.id().toString();
			context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
			day.seats().stream().map(SeatView::code).forEach(codes::add);
		}
		service.start();
		for (String code : codes) {
			String answer = send(service, "POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}", null).body();
			this.seats.add(answer.replaceAll(".*\"token\":\"([^\"]+)\".*", "$1"));
		}
		service.kill();
	}

	private List<Double> round(ServiceProcess service, int seconds) throws Exception {
		service.start();
		send(service, seconds / 6);
		List<Double> waits = send(service, seconds);
		service.kill();
		return waits;
	}

	private List<Double> send(ServiceProcess service, int seconds) throws InterruptedException {
		List<Double> waits = Collections.synchronizedList(new ArrayList<>());
		long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
		List<Thread> tablets = new ArrayList<>();
		for (int seat = 0; seat < SEATS; seat++) {
			int at = seat;
			tablets.add(new Thread(() -> send(service, at, end, waits)));
		}
		tablets.forEach(Thread::start);
		for (Thread tablet : tablets) {
			tablet.join();
		}
		return waits;
	}

	/** A card may be changed 1,000 times; after that the same is sent again, which is quicker and not counted. */
	private void send(ServiceProcess service, int seat, long end, List<Double> waits) {
		try {
			TimeUnit.MILLISECONDS.sleep(PACE.toMillis() * seat / SEATS);
			while (System.nanoTime() < end && this.sequences.get(seat) < 1000) {
				int sequence = this.sequences.get(seat) + 1;
				this.sequences.set(seat, sequence);
				String card = "{\"performance\":\"%s\",\"sequence\":%d,\"first\":%d.%d,\"second\":5.0}"
					.formatted(this.performance, sequence, 1 + sequence % 5, sequence % 10);
				long began = System.nanoTime();
				int status = send(service, "PUT", "/api/cards/" + UUID.randomUUID(), card, this.seats.get(seat)).statusCode();
				double wait = (System.nanoTime() - began) / 1e6;
				if (status != 200) {
					throw new IllegalStateException("Refused with " + status);
				}
				waits.add(wait);
				TimeUnit.MILLISECONDS.sleep(Math.max(0, PACE.toMillis() - (long) wait));
			}
		}
		catch (Exception ex) {
			throw new IllegalStateException(ex);
		}
	}

	private HttpResponse<String> send(ServiceProcess service, String method, String path, String body, String token)
			throws Exception {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + service.port() + path))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (token != null) {
			request.header("Authorization", "Bearer " + token);
		}
		return this.http.send(request.build(), HttpResponse.BodyHandlers.ofString());
	}

	private static void report(String kind, List<Double> waits) {
		List<Double> sorted = waits.stream().sorted().toList();
		System.out.printf("%s: %,d cards, p50 %.1f ms, p99 %.1f ms, longest %.1f ms%n", kind, sorted.size(),
				sorted.get(sorted.size() / 2), sorted.get(sorted.size() * 99 / 100), sorted.get(sorted.size() - 1));
	}

}
