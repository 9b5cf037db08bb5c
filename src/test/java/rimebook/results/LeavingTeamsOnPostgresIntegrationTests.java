package rimebook.results;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class LeavingTeamsOnPostgresIntegrationTests extends LeavingTeamsIntegrationTests {

}
