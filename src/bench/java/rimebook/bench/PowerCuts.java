package rimebook.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

/**
 * Kills the service with SIGKILL, again and again, while nine tablets send cards, and
 * starts it anew on the same database. A tablet repeats a card until it is answered, as
 * the real one does. In the end every acknowledged card must be in the database once, and
 * the record must be whole. On H2 copies are made at a second place all the while; after
 * each kill whatever counts as a copy there must open, and its record be whole.
 *
 * <p>
 * Arguments: {@code h2} or {@code postgres}, then the number of rounds (50).
 */
public final class PowerCuts {

	private static final int SEATS = 9;

	/** Fifty rounds of these fit below the greatest sequence of a card. */
	private static final int CARDS_A_ROUND = 18;

	private final ServiceProcess service;

	private final HttpClient http = HttpClient.newHttpClient();

	private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();

	private final Queue<String> faults = new ConcurrentLinkedQueue<>();

	private final List<Tablet> tablets = new ArrayList<>();

	private final Random random = new Random(20270213);

	private final List<String> settings;

	private final CopiesAtAPlace copies;

	private PowerCuts(List<String> database) {
		this.settings = database;
		this.copies = new CopiesAtAPlace(place());
		this.service = new ServiceProcess(database, Path.of("target", "power-cuts.log"));
	}

	public static void main(String[] arguments) throws Exception {
		boolean postgres = arguments.length > 0 && arguments[0].equals("postgres");
		int rounds = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 50;
		new PowerCuts(postgres ? PostgresDatabase.create().asProperties() : copied(ServiceProcess.onH2())).run(rounds);
		System.exit(0);
	}

	/** With copies at a second place all the time, so that many are cut off, too. */
	private static List<String> copied(List<String> database) throws IOException {
		List<String> settings = new ArrayList<>(database);
		settings.add("rimebook.copy.folder=" + Files.createTempDirectory("rimebook-second-place"));
		settings.add("rimebook.copy.every=200ms");
		settings.add("rimebook.copy.look=100ms");
		return settings;
	}

	private void run(int rounds) throws Exception {
		prepare();
		for (int round = 1; round <= rounds; round++) {
			this.service.start();
			List<Thread> sending = this.tablets.stream().map(Thread::new).toList();
			sending.forEach(Thread::start);
			awaitCards(this.acknowledged.size() + 1 + this.random.nextInt(4 * SEATS));
			this.service.kill();
			for (Thread one : sending) {
				one.join();
			}
			this.faults.addAll(this.copies.faultsSinceTheLast());
		}
		this.service.start();
		for (Tablet tablet : this.tablets) {
			tablet.repeat();
		}
		this.service.kill();
		report(rounds);
	}

	/** A segment with nine judges, a team on the ice, and a code for each tablet. */
	private void prepare() throws Exception {
		try (ConfigurableApplicationContext context = this.service.within()) {
			SmallCompetition day = SmallCompetition.running(context, 2, SEATS);
			day.open(1);
			PerformanceView onIce = day.callNext(1);
			context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
			for (SeatView seat : day.seats()) {
				this.tablets.add(new Tablet(onIce.id().toString(), seat.id().toString(), seat.code()));
			}
		}
		this.service.start();
		for (Tablet tablet : this.tablets) {
			tablet.pair();
		}
		this.service.kill();
	}

	/** Any moment does, but for the seconds in which a cold service only warms up. */
	private void awaitCards(int number) throws InterruptedException {
		for (int i = 0; i < 10_000 && this.acknowledged.size() < number; i++) {
			TimeUnit.MILLISECONDS.sleep(1);
		}
		TimeUnit.MICROSECONDS.sleep(this.random.nextInt(5_000));
	}

	private HttpResponse<String> send(String method, String path, String body, String token)
			throws IOException, InterruptedException {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + this.service.port() + path))
			.timeout(Duration.ofSeconds(20))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (token != null) {
			request.header("Authorization", "Bearer " + token);
		}
		return this.http.send(request.build(), HttpResponse.BodyHandlers.ofString());
	}

	private void report(int rounds) throws Exception {
		List<String> rows = rows();
		long present = this.acknowledged.stream().filter(rows::contains).count();
		long doubled = rows.size() - rows.stream().map((row) -> row.substring(row.indexOf(' '))).distinct().count();
		System.out.printf("%d rounds of SIGKILL, %d seats: acknowledged %d, present %d, doubled %d%n", rounds, SEATS,
				this.acknowledged.size(), present, doubled);
		System.out.println(this.copies.sentence());
		this.faults.forEach(System.out::println);
		int record = verifyRecord(this.service) + startFromCopy();
		if (present != this.acknowledged.size() || doubled > 0 || record != 0 || !this.faults.isEmpty()) {
			System.exit(1);
		}
	}

	/** Every card in the database: its identity, then seat, sequence and mark. */
	private List<String> rows() throws SQLException {
		List<String> rows = new ArrayList<>();
		try (Connection connection = DriverManager.getConnection(this.service.setting("url"), this.service.setting("username"),
				this.service.setting("password"));
				Statement statement = connection.createStatement();
				ResultSet cards = statement
					.executeQuery("select id, seat_id, sequence, first_mark from card_submission")) {
			while (cards.next()) {
				rows.add(cards.getString(1) + " " + cards.getString(2) + " " + cards.getInt(3) + " "
						+ cards.getInt(4));
			}
		}
		return rows;
	}

	/** What was copied while the power went must start another service, whole. */
	private int startFromCopy() throws Exception {
		String place = place();
		if (place.isEmpty()) {
			return 0;
		}
		List<String> other = new ArrayList<>(ServiceProcess.onH2());
		other.add("from-copy=" + place);
		try (ServiceProcess next = new ServiceProcess(other, Path.of("target", "power-cuts.log"))) {
			next.start();
			next.kill();
			System.out.println("Started from a copy of " + place);
			return verifyRecord(next);
		}
	}

	/** The second place, empty for none. */
	private String place() {
		return this.settings.stream()
			.filter((line) -> line.startsWith("rimebook.copy.folder="))
			.map((line) -> line.replace("rimebook.copy.folder=", ""))
			.findFirst()
			.orElse("");
	}

	private static int verifyRecord(ServiceProcess service) throws IOException, InterruptedException {
		List<String> command = Arrays.asList("java", "-cp", System.getProperty("java.class.path"),
				"rimebook.RimebookApplication", "verify-record", "--url", service.setting("url"), "--user",
				service.setting("username"), "--password", service.setting("password"));
		return new ProcessBuilder(command).inheritIO().start().waitFor();
	}

	/** One judge's tablet: changes its card again and again, and repeats what was not answered. */
	private final class Tablet implements Runnable {

		private final String performance;

		private final String seat;

		private final String code;

		private String token = "";

		private String waiting;

		private int sequence;

		Tablet(String performance, String seat, String code) {
			this.performance = performance;
			this.seat = seat;
			this.code = code;
		}

		void pair() throws IOException, InterruptedException {
			HttpResponse<String> answer = send("POST", "/api/seat-pairings", "{\"code\":\"" + this.code + "\"}", null);
			this.token = answer.body().replaceAll(".*\"token\":\"([^\"]+)\".*", "$1");
		}

		@Override
		public void run() {
			for (int i = 0; i < CARDS_A_ROUND; i++) {
				try {
					repeat();
				}
				catch (IOException ex) {
					// The power is out: what waits is sent again after the next start.
					return;
				}
				catch (InterruptedException ex) {
					Thread.currentThread().interrupt();
					return;
				}
			}
		}

		/** Send the card that waits, or the next one. */
		void repeat() throws IOException, InterruptedException {
			if (this.waiting == null) {
				this.sequence++;
				this.waiting = UUID.randomUUID().toString();
			}
			int mark = this.sequence % 60;
			String body = "{\"performance\":\"%s\",\"sequence\":%d,\"first\":%d.%d,\"second\":5.0}"
				.formatted(this.performance, this.sequence, mark / 10, mark % 10);
			HttpResponse<String> answer = send("PUT", "/api/cards/" + this.waiting, body, this.token);
			if (answer.statusCode() == 200) {
				PowerCuts.this.acknowledged
					.add(this.waiting + " " + this.seat + " " + this.sequence + " " + 10 * mark);
				this.waiting = null;
			}
			else if (answer.statusCode() < 500) {
				PowerCuts.this.faults.add("refused: " + answer.statusCode() + " " + answer.body());
				this.waiting = null;
			}
			else {
				throw new IOException("The service is going down: " + answer.statusCode());
			}
		}

	}

}
