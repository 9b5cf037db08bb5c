package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class EndOfCompetitionOnPostgresIntegrationTests extends EndOfCompetitionIntegrationTests {

}
