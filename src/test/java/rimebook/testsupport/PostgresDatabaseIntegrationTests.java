package rimebook.testsupport;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@RequiresDocker
class PostgresDatabaseIntegrationTests {

	@Test
	void isPostgresOfASupportedVersion() throws SQLException {
		try (Connection connection = connect(PostgresDatabase.create())) {
			assertThat(connection.getMetaData().getDatabaseProductName()).isEqualTo("PostgreSQL");
			assertThat(connection.getMetaData().getDatabaseMajorVersion()).isGreaterThanOrEqualTo(15);
		}
	}

	@Test
	void sharesNothingWithAnother() throws SQLException {
		try (Connection one = connect(PostgresDatabase.create());
				Connection other = connect(PostgresDatabase.create());
				Statement inOne = one.createStatement();
				Statement inOther = other.createStatement()) {
			inOne.execute("create table rink (ice int)");
			assertThat(inOne.execute("select ice from rink")).isTrue();
			assertThatExceptionOfType(SQLException.class).isThrownBy(() -> inOther.execute("select ice from rink"))
				.withMessageContaining("does not exist");
		}
	}

	private static Connection connect(PostgresDatabase database) throws SQLException {
		return DriverManager.getConnection(database.url(), database.username(), database.password());
	}

}
