package rimebook.results;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ResultsOnPostgresIntegrationTests extends ResultsIntegrationTests {

}
