package rimebook.archive;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ArchivedTablesOnPostgresIntegrationTests extends ArchivedTablesIntegrationTests {

}
