package rimebook.bench;

import java.io.File;
import java.io.IOException;
import java.net.ServerSocket;
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

import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.accounts.SeatCodes;
import rimebook.marks.PerformanceView;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.SmallCompetition;

/**
 * Kills the service with SIGKILL, again and again, while nine tablets send cards, and
 * starts it anew on the same database. A tablet repeats a card until it is answered, as
 * the real one does. In the end every acknowledged card must be in the database once, and
 * the record must be whole.
 *
 * <p>
 * Arguments: {@code h2} or {@code postgres}, then the number of rounds (50).
 */
public final class PowerCuts {

	private static final int SEATS = 9;

	/** Fifty rounds of these fit below the greatest sequence of a card. */
	private static final int CARDS_A_ROUND = 18;

	private final List<String> database;

	private final int port = freePort();

	private final HttpClient http = HttpClient.newHttpClient();

	private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();

	private final Queue<String> faults = new ConcurrentLinkedQueue<>();

	private final List<Tablet> tablets = new ArrayList<>();

	private final Random random = new Random(20270213);

	private PowerCuts(List<String> database) {
		this.database = database;
	}

	public static void main(String[] arguments) throws Exception {
		boolean postgres = arguments.length > 0 && arguments[0].equals("postgres");
		int rounds = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 50;
		new PowerCuts(postgres ? PostgresDatabase.create().asProperties() : h2()).run(rounds);
		System.exit(0);
	}

	/** The file that a laptop in a rink has, with the settings it has there. */
	private static List<String> h2() throws IOException {
		Path folder = Files.createTempDirectory("rimebook-power-cuts");
		return List.of("spring.datasource.url=jdbc:h2:file:" + folder.resolve("rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE");
	}

	private void run(int rounds) throws Exception {
		prepare();
		for (int round = 1; round <= rounds; round++) {
			Process service = start();
			awaitAnswer(service);
			List<Thread> sending = this.tablets.stream().map(Thread::new).toList();
			sending.forEach(Thread::start);
			awaitCards(this.acknowledged.size() + 1 + this.random.nextInt(4 * SEATS));
			service.destroyForcibly().waitFor();
			for (Thread one : sending) {
				one.join();
			}
		}
		Process last = start();
		awaitAnswer(last);
		for (Tablet tablet : this.tablets) {
			tablet.repeat();
		}
		last.destroyForcibly().waitFor();
		report(rounds);
	}

	/** A segment with nine judges, a team on the ice, and a code for each tablet. */
	private void prepare() throws Exception {
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(RimebookApplication.class)
			.properties("server.port=0")
			.run(this.database.stream().map("--"::concat).toArray(String[]::new))) {
			SmallCompetition day = SmallCompetition.running(context, 2, SEATS);
			day.open(1);
			PerformanceView onIce = day.callNext(1);
			context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
			for (SeatView seat : day.seats()) {
				String code = context.getBean(SeatCodes.class).codeOf(seat.id().value()).orElseThrow();
				this.tablets.add(new Tablet(onIce.id().toString(), seat.id().toString(), code));
			}
		}
		Process service = start();
		awaitAnswer(service);
		for (Tablet tablet : this.tablets) {
			tablet.pair();
		}
		service.destroyForcibly().waitFor();
	}

	private Process start() throws IOException {
		List<String> command = new ArrayList<>(
				List.of("java", "-cp", System.getProperty("java.class.path"), "rimebook.RimebookApplication",
						"--server.port=" + this.port, "--spring.main.banner-mode=off"));
		this.database.forEach((line) -> command.add("--" + line));
		return new ProcessBuilder(command).redirectErrorStream(true)
			.redirectOutput(ProcessBuilder.Redirect.appendTo(new File("target/power-cuts.log")))
			.start();
	}

	private void awaitAnswer(Process service) throws Exception {
		for (int i = 0; i < 600; i++) {
			if (!service.isAlive()) {
				throw new IllegalStateException("The service did not come up again; see target/power-cuts.log");
			}
			try {
				if (send("GET", "/", "", null).statusCode() < 500) {
					return;
				}
			}
			catch (IOException ex) {
				TimeUnit.MILLISECONDS.sleep(100);
			}
		}
		throw new IllegalStateException("The service did not answer within a minute");
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
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + this.port + path))
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
		this.faults.forEach(System.out::println);
		int record = verifyRecord();
		if (present != this.acknowledged.size() || doubled > 0 || record != 0 || !this.faults.isEmpty()) {
			System.exit(1);
		}
	}

	/** Every card in the database: its identity, then seat, sequence and mark. */
	private List<String> rows() throws SQLException {
		List<String> rows = new ArrayList<>();
		try (Connection connection = DriverManager.getConnection(setting("url"), setting("username"),
				setting("password"));
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

	private String setting(String name) {
		return this.database.stream()
			.filter((line) -> line.startsWith("spring.datasource." + name + "="))
			.map((line) -> line.substring(line.indexOf('=') + 1))
			.findFirst()
			.orElse(name.equals("username") ? "rimebook" : "");
	}

	private int verifyRecord() throws IOException, InterruptedException {
		List<String> command = Arrays.asList("java", "-cp", System.getProperty("java.class.path"),
				"rimebook.RimebookApplication", "verify-record", "--url", setting("url"), "--user",
				setting("username"), "--password", setting("password"));
		return new ProcessBuilder(command).inheritIO().start().waitFor();
	}

	private static int freePort() {
		try (ServerSocket socket = new ServerSocket(0)) {
			return socket.getLocalPort();
		}
		catch (IOException ex) {
			throw new IllegalStateException("no free port", ex);
		}
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
