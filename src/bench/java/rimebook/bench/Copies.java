package rimebook.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

/**
 * How long nine tablets wait for the acknowledgement of a card while nothing is copied to
 * a second place, and while copies are made as often as a crew's service makes them; of
 * the latter also those that waited while a copy was on its way. Each tablet sends a card
 * every 200 ms. The rounds take turns, so that a machine that grows warm or slow does so
 * for both; each has a segment of its own, since a card may be changed only 1,000 times.
 *
 * <p>
 * Arguments: seconds of a round (60), number of rounds of each kind (5), skated
 * performances that are in the database before (200).
 */
public final class Copies {

	private static final int SEATS = 9;

	private static final Duration PACE = Duration.ofMillis(200);

	/** For compilers and caches, in seconds. */
	private static final int WARM_UP = 20;

	private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss.SSS'Z'", Locale.ROOT)
		.withZone(ZoneOffset.UTC);

	private final HttpClient http = HttpClient.newHttpClient();

	private final Path folder = Files.createTempDirectory("rimebook-copies");

	private final Path stick = Files.createDirectory(this.folder.resolve("stick"));

	private final Queue<OnIce> days = new ArrayDeque<>();

	private Copies() throws Exception {
	}

	public static void main(String[] arguments) throws Exception {
		new Copies().run(number(arguments, 0, 60), number(arguments, 1, 5), number(arguments, 2, 200));
		System.exit(0);
	}

	private static int number(String[] arguments, int at, int otherwise) {
		return (arguments.length > at) ? Integer.parseInt(arguments[at]) : otherwise;
	}

	private void run(int seconds, int rounds, int skated) throws Exception {
		ServiceProcess plain = service("rimebook.copy.elsewhere=true");
		prepare(plain, skated, 2 * rounds);
		ServiceProcess copying = service("rimebook.copy.folder=" + this.stick);
		System.out.println("Prepared: " + LocalTime.now());
		List<Wait> without = new ArrayList<>();
		List<Wait> with = new ArrayList<>();
		for (int round = 0; round < rounds; round++) {
			without.addAll(round(plain, seconds));
			with.addAll(round(copying, seconds));
		}
		List<Span> copies = copies(with);
		Map<Boolean, List<Wait>> meanwhile = with.stream()
			.collect(Collectors.partitioningBy((wait) -> copies.stream().anyMatch(wait.span()::meets)));
		report("no copies               ", without);
		report("copies                  ", with);
		report("  while one was made    ", meanwhile.get(true));
		report("  while none was made   ", meanwhile.get(false));
		System.out.printf("%d copies were made meanwhile, in %s; the newest has %,d bytes%n", copies.size(),
				copies.stream().map((copy) -> copy.millis() + " ms").collect(Collectors.joining(", ")), newest());
	}

	/**
	 * The time of each copy that was whole before the last card: its name tells when it
	 * was begun, and its note was written last.
	 */
	private List<Span> copies(List<Wait> waits) throws IOException {
		List<Span> copies = new ArrayList<>();
		for (Path note : files(".txt")) {
			String name = note.getFileName().toString();
			if (name.startsWith("rimebook-2")) {
				Span copy = new Span(STAMP.parse(name.substring("rimebook-".length(), name.length() - 4), Instant::from)
					.toEpochMilli(), Files.getLastModifiedTime(note).toMillis());
				if (waits.stream().map(Wait::span).anyMatch(copy::meets)) {
					copies.add(copy);
				}
			}
		}
		return copies;
	}

	private long newest() throws IOException {
		List<Path> copies = files(".zip");
		return Files.size(copies.get(copies.size() - 1));
	}

	private List<Path> files(String ending) throws IOException {
		try (Stream<Path> files = Files.list(this.stick)) {
			return files.filter((file) -> file.toString().endsWith(ending)).sorted().toList();
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

	private List<Wait> round(ServiceProcess service, int seconds) throws Exception {
		OnIce day = this.days.remove();
		service.start();
		send(service, day, WARM_UP);
		List<Wait> waits = send(service, day, seconds);
		service.kill();
		return waits;
	}

	private List<Wait> send(ServiceProcess service, OnIce day, int seconds) throws InterruptedException {
		List<Wait> waits = Collections.synchronizedList(new ArrayList<>());
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

	private void send(ServiceProcess service, OnIce day, int seat, long end, List<Wait> waits) {
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
				long at = System.currentTimeMillis();
				waits.add(new Wait(new Span(at - Math.round(wait), at), wait));
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

	private static void report(String kind, List<Wait> waits) {
		List<Double> sorted = waits.stream().map(Wait::millis).sorted().toList();
		System.out.printf("%s: %,6d cards, p50 %.1f ms, p99 %.1f ms, longest %.1f ms%n", kind, sorted.size(),
				at(sorted, 50), at(sorted, 99), at(sorted, 100));
	}

	private static double at(List<Double> sorted, int percent) {
		return sorted.isEmpty() ? Double.NaN : sorted.get(Math.min(sorted.size() - 1, sorted.size() * percent / 100));
	}

	/**
	 * From one moment to another, in milliseconds.
	 *
	 * @param from since 1970
	 * @param until since 1970
	 */
	private record Span(long from, long until) {

		boolean meets(Span other) {
			return this.from <= other.until && other.from <= this.until;
		}

		long millis() {
			return this.until - this.from;
		}
	}

	/**
	 * How long a tablet waited for an acknowledgement, and when.
	 */
	private record Wait(Span span, double millis) {
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
