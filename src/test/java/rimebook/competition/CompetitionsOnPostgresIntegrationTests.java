package rimebook.competition;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class CompetitionsOnPostgresIntegrationTests extends CompetitionsIntegrationTests {

}
