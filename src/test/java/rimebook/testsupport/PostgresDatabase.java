package rimebook.testsupport;

import java.util.List;

/**
 * An empty PostgreSQL database of its own for a test, in a container that the whole test
 * run shares. Most tests only say {@link OnPostgres}; this is for those which start the
 * application themselves, for example twice on one database: <pre>
 * PostgresDatabase database = PostgresDatabase.create();
 * new SpringApplicationBuilder(RimebookApplication.class).properties(...).run(database.asArguments());
 * new SpringApplicationBuilder(RimebookApplication.class).properties(...).run(database.asArguments());
 * </pre> Such a test is annotated {@link RequiresDocker}. The image is
 * {@code postgres:17-alpine} or what the environment variable
 * {@code RIMEBOOK_TEST_POSTGRES_IMAGE} names.
 *
 * @param url the JDBC address
 * @param username the database's owner
 * @param password the owner's password
 */
public record PostgresDatabase(String url, String username, String password) {

	/**
	 * Create an empty database; the first call of a test run starts the container.
	 * @return the new database
	 */
	public static PostgresDatabase create() {
		return PostgresServer.createDatabase();
	}

	/**
	 * Return the settings by which the application finds this database.
	 * @return lines of the form {@code name=value}
	 */
	public List<String> asProperties() {
		return List.of("spring.datasource.url=" + this.url, "spring.datasource.username=" + this.username,
				"spring.datasource.password=" + this.password);
	}

	/** Its name at the server. */
	public String name() {
		return this.url.replaceFirst("^.*/([^/?]+).*$", "$1");
	}

	/**
	 * Run one of PostgreSQL's own tools beside the server; fail if it does.
	 * @param command such as {@code pg_dump} with its arguments
	 */
	public void run(String... command) {
		PostgresServer.run(command);
	}

	/**
	 * Return the same settings as command line arguments, which win over every other.
	 * @return arguments of the form {@code --name=value}
	 */
	public String[] asArguments() {
		return asProperties().stream().map("--"::concat).toArray(String[]::new);
	}

}
