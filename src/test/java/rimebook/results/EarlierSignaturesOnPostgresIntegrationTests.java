package rimebook.results;

import rimebook.testsupport.EarlierDatabase;
import rimebook.testsupport.RequiresDocker;

@RequiresDocker
class EarlierSignaturesOnPostgresIntegrationTests extends EarlierSignaturesIntegrationTests {

	@Override
	EarlierDatabase database() {
		return EarlierDatabase.onPostgres();
	}

}
