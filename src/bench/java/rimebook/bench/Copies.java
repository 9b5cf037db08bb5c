package rimebook.bench;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
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
 * for both; each has a segment of its own, since a card may be changed only 1,000 times.
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

	private final Queue<OnIce> days = new ArrayDeque<>();

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
		prepare(plain, skated, 2 * rounds);
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

	private void prepare(ServiceProcess service, int skated, int rounds) throws Exception {
		Map<String, List<String>> codes = new LinkedHashMap<>();
		try (ConfigurableApplicationContext context = service.within()) {
			for (int done = 0; done < skated; done += 20) {
				SmallCompetition earlier = SmallCompetition.running(context, 20, SEATS);
				earlier.open(1);
				earlier.skateRest(1);
			}
			for (int round = 0; round < rounds; round++) {
				SmallCompetition day = SmallCompetition.running(context, 2, SEATS);
				day.open(1);
				PerformanceView onIce = day.callNext(1);
				context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
				codes.put(onIce.id().toString(), day.seats().stream().map(SeatView::code).toList());
			}
		}
		service.start();
		for (Map.Entry<String, List<String>> day : codes.entrySet()) {
			List<String> tokens = new ArrayList<>();
			for (String code : day.getValue()) {
				String answer = send(service, "POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}", null).body();
				tokens.add(answer.replaceAll(".*\"token\":\"([^\"]+)\".*", "$1"));
			}
			this.days.add(new OnIce(day.getKey(), tokens, new AtomicIntegerArray(SEATS)));
		}
		service.kill();
	}

	private List<Double> round(ServiceProcess service, int seconds) throws Exception {
		OnIce day = this.days.remove();
		service.start();
		send(service, day, seconds / 4);
		List<Double> waits = send(service, day, seconds);
		service.kill();
		return waits;
	}

	private List<Double> send(ServiceProcess service, OnIce day, int seconds) throws InterruptedException {
		List<Double> waits = Collections.synchronizedList(new ArrayList<>());
		long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
		List<Thread> tablets = new ArrayList<>();
		for (int seat = 0; seat < SEATS; seat++) {
			int at = seat;
			tablets.add(new Thread(() -> send(service, day, at, end, waits)));
		}
		tablets.forEach(Thread::start);
		for (Thread tablet : tablets) {
			tablet.join();
		}
		return waits;
	}

	private void send(ServiceProcess service, OnIce day, int seat, long end, List<Double> waits) {
		try {
			TimeUnit.MILLISECONDS.sleep(PACE.toMillis() * seat / SEATS);
			while (System.nanoTime() < end) {
				int sequence = day.sequences().incrementAndGet(seat);
				String card = "{\"performance\":\"%s\",\"sequence\":%d,\"first\":%d.%d,\"second\":5.0}"
					.formatted(day.performance(), sequence, 1 + sequence % 5, sequence % 10);
				long began = System.nanoTime();
				int status = send(service, "PUT", "/api/cards/" + UUID.randomUUID(), card, day.seats().get(seat)).statusCode();
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

	/**
	 * A team on the ice and the tablets of its judges.
	 *
	 * @param seats what each tablet proves itself with
	 * @param sequences the number of each tablet's last card
	 */
	private record OnIce(String performance, List<String> seats, AtomicIntegerArray sequences) {
	}

}
