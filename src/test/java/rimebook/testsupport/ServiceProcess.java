package rimebook.testsupport;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.HttpURLConnection;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;

/**
 * The service as a process of its own on a port that stays the same, so that it can be
 * killed as a power cut does and started again on the same database. While it is down the
 * database can be opened {@link #within from here}.
 */
public final class ServiceProcess implements AutoCloseable {

	private static final Duration PATIENCE = Duration.ofMinutes(2);

	private final List<String> database;

	private final File log;

	private final List<String> machine;

	private final int port = freePort();

	private @Nullable Process process;

	/**
	 * @param database the settings of its database as {@code name=value}
	 * @param log where its output is appended
	 * @param machine options of its Java machine, such as {@code -Xmx512m}
	 */
	public ServiceProcess(List<String> database, Path log, String... machine) {
		this.database = List.copyOf(database);
		this.machine = List.of(machine);
		this.log = log.toFile();
	}

	/** The file that a laptop in a rink has, with the settings it has there. */
	public static List<String> onH2() throws IOException {
		Path folder = Files.createTempDirectory("rimebook-service");
		return List.of("spring.datasource.url=jdbc:h2:file:" + folder.resolve("rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE");
	}

	/** The port it answers at whenever it is up. */
	public int port() {
		return this.port;
	}

	/** Start the service and wait until it answers. */
	public void start() throws IOException, InterruptedException {
		List<String> command = new ArrayList<>(List.of("java"));
		command.addAll(this.machine);
		// What it finds in the database was perhaps written from here.
		command.add("-Drimebook.digests=" + System.getProperty("rimebook.digests", ""));
		command.addAll(List.of("-cp", System.getProperty("java.class.path"), RimebookApplication.class.getName(),
				"--server.port=" + this.port, "--spring.main.banner-mode=off"));
		this.database.forEach((line) -> command.add("--" + line));
		this.process = new ProcessBuilder(command).redirectErrorStream(true)
			.redirectOutput(ProcessBuilder.Redirect.appendTo(this.log))
			.start();
		awaitAnswer(this.process);
	}

	private void awaitAnswer(Process started) {
		Awaitility.await("an answer; see " + this.log)
			.atMost(PATIENCE)
			.failFast("The service did not come up; see " + this.log, () -> !started.isAlive())
			.until(this::answers);
	}

	private boolean answers() {
		try {
			HttpURLConnection connection = (HttpURLConnection) URI.create("http://localhost:" + this.port + "/")
				.toURL()
				.openConnection();
			connection.setReadTimeout(5000);
			return connection.getResponseCode() < HttpURLConnection.HTTP_INTERNAL_ERROR;
		}
		catch (IOException ex) {
			return false;
		}
	}

	/** Kill it with SIGKILL, whatever it is doing. */
	public void kill() throws InterruptedException {
		if (this.process != null) {
			this.process.destroyForcibly().waitFor();
		}
	}

	/** Ask it to end, as an operating system does, and wait until it has. */
	public void stop() throws InterruptedException {
		if (this.process != null) {
			this.process.destroy();
			this.process.waitFor();
		}
	}

	/** Bytes of its heap that are in use after a full collection. */
	public long heapInUse() throws IOException {
		if (this.process == null) {
			throw new IllegalStateException("The service is not up");
		}
		Process asks = this.process;
		Process asked = new ProcessBuilder("jcmd", Long.toString(asks.pid()), "GC.class_histogram")
			.redirectErrorStream(true)
			.start();
		try (BufferedReader lines = asked.inputReader()) {
			List<String> said = lines.lines().toList();
			return said.stream()
				.filter((line) -> line.startsWith("Total"))
				.map((line) -> line.trim().split("\\s+"))
				.mapToLong((words) -> Long.parseLong(words[2]))
				.findFirst()
				.orElseThrow(() -> new IOException(
						"jcmd said of " + (asks.isAlive() ? "a service that is up: " : "one that has ended: ")
								+ said.stream().limit(5).toList()));
		}
	}

	/**
	 * Open its database from here while it is down, with everything the service has; what
	 * is not asked for is not begun.
	 */
	public ConfigurableApplicationContext within() {
		return new SpringApplicationBuilder(RimebookApplication.class).lazyInitialization(true)
			.properties("server.port=0")
			.run(this.database.stream().map("--"::concat).toArray(String[]::new));
	}

	/** A setting of its database, such as {@code url}; an empty one if it has none. */
	public String setting(String name) {
		String prefix = "spring.datasource." + name + "=";
		return this.database.stream()
			.filter((line) -> line.startsWith(prefix))
			.map((line) -> line.substring(prefix.length()))
			.findFirst()
			.orElse(name.equals("username") ? "rimebook" : "");
	}

	@Override
	public void close() {
		if (this.process != null) {
			this.process.destroyForcibly();
		}
	}

	private static int freePort() {
		try (ServerSocket socket = new ServerSocket(0)) {
			return socket.getLocalPort();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
