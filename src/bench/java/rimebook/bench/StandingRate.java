package rimebook.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

/**
 * How many standing pages a second the service answers, and the proxy in front of it from
 * its cache, for each that nginx sends of the same bytes from a file: all on this
 * machine, in turn, asked by {@code wrk} over 64 connections that stay open. The standing
 * is that of a free skating of 30 teams and nine judges, all of them marked.
 *
 * <p>
 * Arguments: {@code h2} or {@code postgres}, then the seconds of one turn (4), the number
 * of rounds (3), and {@code stay} to keep everything up after that for somebody who looks on.
 */
public final class StandingRate {

	private static final int TEAMS = 30;

	private static final int JUDGES = 9;

	private static final Pattern RATE = Pattern.compile("Requests/sec:\\s*([\\d.]+)");

	private static final Pattern FAULTS = Pattern.compile("(Non-2xx|Socket errors).*");

	private final HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

	private final Map<String, List<Double>> rates = new TreeMap<>();

	private final int seconds;

	private String page = "";

	private StandingRate(int seconds) {
		this.seconds = seconds;
	}

	public static void main(String[] arguments) throws Exception {
		boolean postgres = arguments.length > 0 && arguments[0].equals("postgres");
		int seconds = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 4;
		int rounds = (arguments.length > 2) ? Integer.parseInt(arguments[2]) : 3;
		new StandingRate(seconds).run(postgres ? PostgresDatabase.create().asProperties() : ServiceProcess.onH2(), rounds,
				arguments.length > 3);
		System.exit(0);
	}

	private void run(List<String> database, int rounds, boolean stay) throws Exception {
		List<String> settings = Stream.concat(database.stream(), Stream.of("rimebook.door.proxies=127.0.0.1")).toList();
		try (ServiceProcess service = new ServiceProcess(settings, Path.of("target", "standing-rate.log"), "-Xmx512m",
				"-XX:MaxGCPauseMillis=30")) {
			prepare(service);
			service.start();
			try (Nginx nginx = Nginx.before(service.port())) {
				measure(service, nginx, rounds);
				while (stay) {
					System.out.println("service " + service.port() + ", proxy " + nginx.port() + ", file " + nginx.filePort() + ", " + this.page);
					TimeUnit.MINUTES.sleep(60);
				}
			}
		}
	}

	private void prepare(ServiceProcess service) {
		try (ConfigurableApplicationContext context = service.within()) {
			SmallCompetition made = SmallCompetition.running(context, TEAMS, JUDGES);
			made.open(1);
			made.skateRest(1);
			made.open(2);
			made.skateRest(2);
			this.page = "/follow/" + made.competition().slug() + "/" + made.event().slug() + "/"
					+ made.event().segments().get(1).slug();
		}
	}

	private void measure(ServiceProcess service, Nginx nginx, int rounds) throws Exception {
		byte[] plain = fetch(service.port(), "identity");
		byte[] zipped = fetch(service.port(), "gzip");
		nginx.file("page.html", plain);
		nginx.file("page.html.gz", zipped);
		System.out.printf("%d bytes, %d compressed%n", plain.length, zipped.length);
		ask("warm", service.port(), this.page, "gzip", 4 * this.seconds);
		ask("warm", service.port(), this.page, "identity", 2 * this.seconds);
		ask("warm", nginx.port(), this.page, "gzip", this.seconds);
		for (int round = 0; round < rounds; round++) {
			for (String encoding : List.of("gzip", "identity")) {
				ask(encoding + " file", nginx.filePort(), "/page.html", encoding, this.seconds);
				ask(encoding + " plain", nginx.plainPort(), "/page.html", encoding, this.seconds);
				ask(encoding + " service", service.port(), this.page, encoding, this.seconds);
				ask(encoding + " proxy", nginx.port(), this.page, encoding, this.seconds);
			}
		}
		for (String encoding : List.of("gzip", "identity")) {
			double file = median(encoding + " file");
			System.out.printf("%-9s file %8.0f/s   service %8.0f/s = %.2f   proxy's cache %8.0f/s = %.2f%n", encoding, file,
					median(encoding + " service"), median(encoding + " service") / file, median(encoding + " proxy"),
					median(encoding + " proxy") / file);
			double itself = median(encoding + " plain");
			System.out.printf("%-9s file %8.0f/s without open_file_cache: service %.2f, proxy's cache %.2f%n", "", itself,
					median(encoding + " service") / itself, median(encoding + " proxy") / itself);
		}
	}

	private double median(String what) {
		List<Double> sorted = this.rates.get(what).stream().sorted().toList();
		return sorted.get(sorted.size() / 2);
	}

	private byte[] fetch(int port, String encoding) throws IOException, InterruptedException {
		HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + this.page))
			.header("Accept-Encoding", encoding)
			.build();
		HttpResponse<byte[]> answer = this.http.send(request, HttpResponse.BodyHandlers.ofByteArray());
		if (answer.statusCode() != 200) {
			throw new IOException(this.page + ": " + answer.statusCode());
		}
		return answer.body();
	}

	/** One turn; what was not answered with 200 is said and does not count as a page. */
	private void ask(String what, int port, String path, String encoding, int time) throws IOException, InterruptedException {
		Process wrk = new ProcessBuilder("wrk", "-t1", "-c64", "-d" + time, "-H", "Accept-Encoding: " + encoding,
				"http://127.0.0.1:" + port + path)
			.redirectErrorStream(true)
			.start();
		StringBuilder said = new StringBuilder();
		try (BufferedReader lines = wrk.inputReader()) {
			lines.lines().forEach((line) -> said.append(line).append('\n'));
		}
		wrk.waitFor();
		Matcher fault = FAULTS.matcher(said);
		if (fault.find()) {
			System.out.println(what + ": " + fault.group());
		}
		Matcher rate = RATE.matcher(said);
		if (!rate.find()) {
			throw new IOException("wrk said:\n" + said);
		}
		this.rates.computeIfAbsent(what, (key) -> new ArrayList<>()).add(Double.parseDouble(rate.group(1)));
	}

}
