package rimebook.entries;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class OneClubOnPostgresIntegrationTests extends OneClubIntegrationTests {

}
