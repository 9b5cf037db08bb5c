package rimebook.entries;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class EntriesOnPostgresIntegrationTests extends EntriesIntegrationTests {

}
