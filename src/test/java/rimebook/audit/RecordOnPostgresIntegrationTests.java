package rimebook.audit;

import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.PlatformTransactionManager;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RecordOnPostgresIntegrationTests extends RecordIntegrationTests {

	@Autowired
	RecordOnPostgresIntegrationTests(PlatformTransactionManager transactions) {
		super(transactions);
	}

}
