package rimebook.rosters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class NamesakesOnPostgresIntegrationTests extends NamesakesIntegrationTests {

}
