package rimebook.audit;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class StoredCheckOnPostgresIntegrationTests extends StoredCheckIntegrationTests {

	@Override
	String createGuard(String table) {
		return "create trigger " + table + "_stays before update or delete or truncate on " + table
				+ " for each statement execute function refuse_rewriting()";
	}

	@Override
	String dropGuard(String table) {
		return "drop trigger " + table + "_stays on " + table;
	}

}
