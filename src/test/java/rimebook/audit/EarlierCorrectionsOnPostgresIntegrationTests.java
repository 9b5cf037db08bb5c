package rimebook.audit;

import rimebook.testsupport.EarlierDatabase;
import rimebook.testsupport.RequiresDocker;

@RequiresDocker
class EarlierCorrectionsOnPostgresIntegrationTests extends EarlierCorrectionsIntegrationTests {

	@Override
	EarlierDatabase database() {
		return EarlierDatabase.onPostgres();
	}

}
