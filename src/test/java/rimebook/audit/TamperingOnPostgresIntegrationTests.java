package rimebook.audit;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class TamperingOnPostgresIntegrationTests extends TamperingIntegrationTests {

	@Override
	String switchKeys(boolean on) {
		return "set session_replication_role = " + (on ? "origin" : "replica");
	}

	@Override
	String inDialect(String sql) {
		return sql;
	}

	@Override
	String createGuard() {
		return "create trigger record_line_stays before update or delete or truncate on record_line "
				+ "for each statement execute function refuse_rewriting()";
	}

	@Override
	String dropGuard() {
		return "drop trigger if exists record_line_stays on record_line";
	}

}
