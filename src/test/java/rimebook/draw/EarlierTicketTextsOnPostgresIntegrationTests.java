package rimebook.draw;

import rimebook.testsupport.EarlierDatabase;
import rimebook.testsupport.RequiresDocker;

@RequiresDocker
class EarlierTicketTextsOnPostgresIntegrationTests extends EarlierTicketTextsIntegrationTests {

	@Override
	EarlierDatabase database() {
		return EarlierDatabase.onPostgres();
	}

}
