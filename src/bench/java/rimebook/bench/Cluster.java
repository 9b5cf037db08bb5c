package rimebook.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.ServiceProcess;

/**
 * The service as a competition has it, each node a process of its own with 512 MiB of
 * heap: one that is asked directly, or two on one PostgreSQL behind nginx as
 * {@code deploy/nginx} sets it up.
 */
final class Cluster implements AutoCloseable {

	private static final String[] MACHINE = { "-Xmx512m", "-XX:MaxGCPauseMillis=30", "-XX:+ExitOnOutOfMemoryError" };

	private final List<ServiceProcess> nodes = new ArrayList<>();

	private @Nullable Nginx nginx;

	private Cluster() {
	}

	/**
	 * Make the one that a program's argument names.
	 * @param what {@code h2}, {@code postgres} or {@code nodes}
	 * @param log what the files of its output in {@code target} are called
	 */
	static Cluster named(String what, String log) throws IOException {
		return switch (what) {
			// The latter is what Maven gives where nothing is said.
			case "h2", ".*" -> one(ServiceProcess.onH2(), log);
			case "postgres" -> one(PostgresDatabase.create().asProperties(), log);
			case "nodes" -> two(log);
			default -> throw new IllegalArgumentException("h2, postgres or nodes instead of " + what);
		};
	}

	private static Cluster one(List<String> database, String log) {
		Cluster cluster = new Cluster();
		cluster.add(database, log);
		return cluster;
	}

	/**
	 * Make two nodes on a database of their own.
	 * @param log what the files of their output in {@code target} are called
	 * @param more settings of both as {@code name=value}
	 */
	static Cluster two(String log, String... more) {
		if (!Nginx.isHere()) {
			throw new IllegalStateException("There is no nginx on this machine.");
		}
		List<String> settings = new ArrayList<>(PostgresDatabase.create().asProperties());
		settings.addAll(List.of("rimebook.door.proxies=127.0.0.1", "rimebook.door.drain=3s", "rimebook.copy.elsewhere=true",
				"spring.datasource.hikari.maximum-pool-size=20"));
		settings.addAll(List.of(more));
		Cluster cluster = new Cluster();
		Stream.of("-1", "-2").forEach((node) -> cluster.add(settings, log + node));
		return cluster;
	}

	private void add(List<String> settings, String log) {
		this.nodes.add(new ServiceProcess(settings, Path.of("target", log + ".log"), MACHINE));
	}

	/** Its nodes, in the order in which they are started and exchanged. */
	List<ServiceProcess> nodes() {
		return this.nodes;
	}

	/** Open its database from here while no node is up. */
	ConfigurableApplicationContext within() {
		return this.nodes.get(0).within();
	}

	/** Connect to its database: while it is up if it is PostgreSQL, afterwards if it is H2. */
	Connection connect() throws SQLException {
		ServiceProcess node = this.nodes.get(0);
		return DriverManager.getConnection(node.setting("url"), node.setting("username"), node.setting("password"));
	}

	/** Start all nodes, one after the other, and what stands before them. */
	void start() throws IOException, InterruptedException {
		for (ServiceProcess node : this.nodes) {
			node.start();
		}
		if (this.nodes.size() > 1) {
			this.nginx = Nginx.before(this.nodes.stream().mapToInt(ServiceProcess::port).toArray());
		}
	}

	/** Where everybody asks. */
	int port() {
		return (this.nginx != null) ? this.nginx.port() : this.nodes.get(0).port();
	}

	/** Bytes of the heaps of all nodes that are in use after full collections. */
	long heapInUse() throws IOException {
		long bytes = 0;
		for (ServiceProcess node : this.nodes) {
			bytes += node.heapInUse();
		}
		return bytes;
	}

	/** Ask all nodes to end, and wait until they have. */
	void stop() throws InterruptedException {
		for (ServiceProcess node : this.nodes) {
			node.stop();
		}
	}

	@Override
	public void close() {
		if (this.nginx != null) {
			this.nginx.close();
		}
		this.nodes.forEach(ServiceProcess::close);
	}

}
