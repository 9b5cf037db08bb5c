package rimebook.audit;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class KindsOfTamperingOnPostgresIntegrationTests extends KindsOfTamperingIntegrationTests {

	@Override
	String dropGuard(String table) {
		return "drop trigger " + table + "_stays on " + table;
	}

}
