package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ListAuthorisationsOnPostgresIntegrationTests extends ListAuthorisationsIntegrationTests {

}
