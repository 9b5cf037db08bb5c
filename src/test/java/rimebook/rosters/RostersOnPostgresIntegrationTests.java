package rimebook.rosters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RostersOnPostgresIntegrationTests extends RostersIntegrationTests {

}
