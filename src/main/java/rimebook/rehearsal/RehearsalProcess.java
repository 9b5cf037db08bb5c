package rimebook.rehearsal;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

import tools.jackson.databind.json.JsonMapper;

/**
 * The service of a rehearsal as a process of its own. It lives as long as whoever started
 * it holds the other end of its input, so that it ends with its starter however that
 * ends.
 */
final class RehearsalProcess {

	/** What the process prints once it answers. */
	static final String READY = "The rehearsal is ready at port ";

	private static final int LAST_WORDS = 40;

	private static final long PATIENCE = 15;

	/** What would lead it to the real service, or to what only that one may use. */
	private static final List<String> NOT_INHERITED = List.of("SPRING_", "RIMEBOOK_", "SERVER_", "MANAGEMENT_",
			"LOGGING_", "JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS");

	private final RehearsalFolder folder;

	private final Process process;

	private final Deque<String> lastWords = new ArrayDeque<>();

	private final CompletableFuture<Integer> ready = new CompletableFuture<>();

	private final CompletableFuture<Void> gone = new CompletableFuture<>();

	private RehearsalProcess(RehearsalFolder folder, Process process) {
		this.folder = folder;
		this.process = process;
	}

	/**
	 * Start it on the archive that lies in a folder. Passwords are in its environment,
	 * where nobody else of this machine can read them. What it writes need not survive a
	 * power cut, so it does not ask the disk to hurry, which the real service does at
	 * each card.
	 */
	static RehearsalProcess start(RehearsalFolder folder, UUID competition, Order order) throws IOException {
		List<String> command = new ArrayList<>(
				JavaMachine.command(List.of("-Xmx" + order.heap() + "m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1",
						"-XX:-UsePerfData", "-Dfile.encoding=UTF-8", "-Djava.io.tmpdir=" + folder.temporary(),
						"-Drimebook.digests=" + System.getProperty("rimebook.digests", ""))));
		command.addAll(List.of("--spring.profiles.active=rehearsal", "--spring.main.banner-mode=off",
				"--spring.datasource.url=jdbc:h2:file:" + folder.database()
						+ ";LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE",
				"--server.port=" + order.port(), "--rimebook.rehearsal.archive=" + folder.archive(),
				"--rimebook.rehearsal.folder=" + folder.path()));
		ProcessBuilder builder = new ProcessBuilder(command).directory(folder.path().toFile())
			.redirectErrorStream(true);
		Map<String, String> environment = builder.environment();
		environment.keySet().removeIf((name) -> NOT_INHERITED.stream().anyMatch(name::startsWith));
		environment.put("RIMEBOOK_REHEARSAL_PASSWORD", order.password());
		environment.put("SPRING_APPLICATION_JSON", JsonMapper.shared().writeValueAsString(order.settings()));
		return of(folder, competition, builder);
	}

	/** The same of a process that says the same. */
	static RehearsalProcess of(RehearsalFolder folder, UUID competition, ProcessBuilder builder) throws IOException {
		RehearsalProcess started = new RehearsalProcess(folder, builder.start());
		folder.note(competition, started.process.pid());
		Thread listener = new Thread(started::listen, "rehearsal-listener");
		listener.setDaemon(true);
		listener.start();
		return started;
	}

	/** Its words are read as they come, or it would wait; a file of them would remain. */
	private void listen() {
		try (BufferedReader words = this.process.inputReader(StandardCharsets.UTF_8)) {
			for (String line = words.readLine(); line != null; line = words.readLine()) {
				hear(line);
			}
		}
		catch (IOException ex) {
			// It is gone.
		}
		this.process.onExit().join();
		this.ready.completeExceptionally(new IllegalStateException("The rehearsal ended before it was ready"));
		this.gone.complete(null);
	}

	private void hear(String line) {
		if (line.startsWith(READY)) {
			this.ready.complete(Integer.parseInt(line.substring(READY.length())));
		}
		synchronized (this.lastWords) {
			this.lastWords.addLast(line);
			if (this.lastWords.size() > LAST_WORDS) {
				this.lastWords.removeFirst();
			}
		}
	}

	/** The port at which it answers, once it does; fails if it ends before. */
	CompletableFuture<Integer> ready() {
		return this.ready;
	}

	/** Completes when the process has ended. */
	CompletableFuture<Void> gone() {
		return this.gone;
	}

	/** The last lines it printed, for the log where it failed. */
	List<String> lastWords() {
		synchronized (this.lastWords) {
			return List.copyOf(this.lastWords);
		}
	}

	RehearsalFolder folder() {
		return this.folder;
	}

	/** End it at once. */
	void kill() {
		this.process.destroyForcibly();
	}

	long pid() {
		return this.process.pid();
	}

	/** Stop it and delete its folder. */
	void end() throws IOException {
		this.process.getOutputStream().close();
		this.process.destroy();
		try {
			if (!this.process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
				this.process.destroyForcibly().waitFor();
			}
		}
		catch (InterruptedException ex) {
			this.process.destroyForcibly();
			Thread.currentThread().interrupt();
		}
		this.folder.delete();
	}

	/**
	 * How it is started.
	 *
	 * @param port where it answers
	 * @param heap megabytes it may take
	 * @param password of everybody who signs in there
	 * @param settings others that it has of its starter
	 */
	record Order(int port, int heap, String password, Map<String, String> settings) {

		@Override
		public String toString() {
			return "Order[" + this.port + ", " + this.heap + "]";
		}

	}

}
