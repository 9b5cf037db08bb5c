package rimebook.live;

import java.sql.Connection;
import java.sql.DriverManager;

import org.junit.jupiter.api.Test;
import org.postgresql.PGConnection;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.ApplicationContext;

import rimebook.testsupport.OnPostgres;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** What another node on the same database hears while a team is marked. */
@WholeApplication
@OnPostgres
class AnnouncedVersionsOnPostgresIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcConnectionDetails details;

	@Test
	void anotherNodeHearsOfTheOrderTheIceAndTheStanding() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		try (Connection other = DriverManager.getConnection(this.details.getJdbcUrl(), this.details.getUsername(),
				this.details.getPassword())) {
			other.createStatement().execute("listen rimebook_moved");
			PGConnection heard = other.unwrap(PGConnection.class);
			day.open(1);
			assertThat(heard.getNotifications(5000)).isNotEmpty();
			while (heard.getNotifications(300).length > 0) {
				// Until nothing more is said of that.
			}
			day.skateNext(1);
			assertThat(heard.getNotifications(5000)).isNotEmpty();
		}
	}

	@Test
	void thisNodeListens() {
		assertThat(this.context.getBean(NodeEar.class).isRunning()).isTrue();
	}

}
