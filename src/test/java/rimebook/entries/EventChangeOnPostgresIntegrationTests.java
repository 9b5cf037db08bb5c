package rimebook.entries;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class EventChangeOnPostgresIntegrationTests extends EventChangeIntegrationTests {

}
