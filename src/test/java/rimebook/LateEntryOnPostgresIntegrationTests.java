package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class LateEntryOnPostgresIntegrationTests extends LateEntryIntegrationTests {

}
