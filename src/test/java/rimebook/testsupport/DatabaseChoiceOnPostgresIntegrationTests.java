package rimebook.testsupport;

@OnPostgres
class DatabaseChoiceOnPostgresIntegrationTests extends DatabaseChoiceTests {

	@Override
	String expected() {
		return "PostgreSQL";
	}

}
