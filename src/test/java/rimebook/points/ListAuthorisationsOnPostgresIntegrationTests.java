package rimebook.points;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ListAuthorisationsOnPostgresIntegrationTests extends ListAuthorisationsIntegrationTests {

}
