package rimebook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * Where the database is: what is typed wins over the environment, that over a file
 * {@code application.properties} beside the jar, that over the one inside, as it is when
 * the service starts.
 *
 * @param url the JDBC address
 * @param user who signs in to the database
 * @param password the password, may be empty
 */
record DatabaseAddress(String url, String user, String password) {

	private static final String FILE = "application.properties";

	static DatabaseAddress of(Arguments typed, Map<String, String> environment, Path directory) {
		Sources sources = new Sources(typed, environment, settings(directory));
		return new DatabaseAddress(sources.find("--url", "URL", "url"), sources.find("--user", "USERNAME", "username"),
				sources.find("--password", "PASSWORD", "password"));
	}

	private static Properties settings(Path directory) {
		Properties settings = new Properties();
		try (InputStream inside = DatabaseAddress.class.getResourceAsStream("/" + FILE)) {
			if (inside != null) {
				settings.load(inside);
			}
			for (Path beside : new Path[] { directory.resolve(FILE), directory.resolve("config").resolve(FILE) }) {
				load(beside, settings);
			}
		}
		catch (IOException ex) {
			throw InputException.of(FILE, "cannot be read");
		}
		return settings;
	}

	private static void load(Path file, Properties settings) throws IOException {
		if (Files.isReadable(file)) {
			try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
				settings.load(reader);
			}
		}
	}

	/** Open it, but never make a database that is not there. */
	Connection open() throws SQLException {
		return DriverManager.getConnection(existing(), this.user, this.password);
	}

	/** The address at which no database is ever made. */
	String existing() {
		boolean mayBeMade = this.url.startsWith("jdbc:h2:") && !this.url.toUpperCase(Locale.ROOT).contains("IFEXISTS=");
		return mayBeMade ? this.url + ";IFEXISTS=TRUE" : this.url;
	}

	/** The address without its settings, in which a password may stand. */
	String shown() {
		return this.url.split("[;?]", 2)[0];
	}

	@Override
	public String toString() {
		return shown();
	}

	/** Where a setting may stand, the first one that has it. */
	private record Sources(Arguments typed, Map<String, String> environment, Properties settings) {

		String find(String option, String variable, String setting) {
			return this.typed.option(option)
				.or(() -> Optional.ofNullable(this.environment.get("SPRING_DATASOURCE_" + variable)))
				.orElseGet(() -> this.settings.getProperty("spring.datasource." + setting, ""));
		}

	}

}
