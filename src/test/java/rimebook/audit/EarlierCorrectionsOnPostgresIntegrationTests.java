package rimebook.audit;

import org.springframework.jdbc.datasource.DriverManagerDataSource;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;

@RequiresDocker
class EarlierCorrectionsOnPostgresIntegrationTests extends EarlierCorrectionsIntegrationTests {

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
