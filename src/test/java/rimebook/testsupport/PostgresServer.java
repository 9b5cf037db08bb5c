package rimebook.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

import org.testcontainers.containers.Container;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * The one PostgreSQL of this JVM. It starts with the first database asked of it and ends
 * with the JVM.
 */
final class PostgresServer {

	private static final String IMAGE_VARIABLE = "RIMEBOOK_TEST_POSTGRES_IMAGE";

	private static final AtomicInteger CREATED = new AtomicInteger();

	private PostgresServer() {
	}

	static PostgresDatabase createDatabase() {
		PostgreSQLContainer server = Running.SERVER;
		String name = "rimebook_" + CREATED.incrementAndGet();
		execute(server, "create database " + name);
		String url = server.getJdbcUrl().replace("/" + server.getDatabaseName(), "/" + name);
		return new PostgresDatabase(url, server.getUsername(), server.getPassword());
	}

	private static void execute(PostgreSQLContainer server, String sql) {
		try (Connection connection = DriverManager.getConnection(server.getJdbcUrl(), server.getUsername(),
				server.getPassword()); Statement statement = connection.createStatement()) {
			statement.execute(sql);
		}
		catch (SQLException ex) {
			throw new IllegalStateException("PostgreSQL refused: " + sql, ex);
		}
	}

	static void run(String... command) {
		try {
			Container.ExecResult done = Running.SERVER.execInContainer(command);
			if (done.getExitCode() != 0) {
				throw new IllegalStateException(String.join(" ", command) + ": " + done.getStderr());
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException(ex);
		}
	}

	private static DockerImageName image() {
		return DockerImageName.parse(System.getenv().getOrDefault(IMAGE_VARIABLE, "postgres:17-alpine"))
			.asCompatibleSubstituteFor("postgres");
	}

	/** Its own class, so that nothing starts before a database is wanted. */
	private static final class Running {

		private static final PostgreSQLContainer SERVER = start();

		// Spring keeps many contexts alive, each with its own pool of connections.
		// Nothing here needs to survive a power failure.
		private static PostgreSQLContainer start() {
			PostgreSQLContainer server = new PostgreSQLContainer(image()).withDatabaseName("administration")
				.withCommand("postgres", "-c", "fsync=off", "-c", "synchronous_commit=off", "-c",
						"full_page_writes=off", "-c", "jit=off", "-c", "max_connections=400");
			server.start();
			return server;
		}

	}

}
