package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class WholeCompetitionOnPostgresIntegrationTests extends WholeCompetitionIntegrationTests {

}
