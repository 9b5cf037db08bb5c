package rimebook.draw;

import org.springframework.jdbc.datasource.DriverManagerDataSource;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;

@RequiresDocker
class EarlierTicketTextsOnPostgresIntegrationTests extends EarlierTicketTextsIntegrationTests {

	@Override
	DriverManagerDataSource database() {
		PostgresDatabase database = PostgresDatabase.create();
		return new DriverManagerDataSource(database.url(), database.username(), database.password());
	}

	@Override
	String vendor() {
		return "postgresql";
	}

}
