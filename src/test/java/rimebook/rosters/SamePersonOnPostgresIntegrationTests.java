package rimebook.rosters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class SamePersonOnPostgresIntegrationTests extends SamePersonIntegrationTests {

}
