package rimebook.entries;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PlannedElementsOnPostgresIntegrationTests extends PlannedElementsIntegrationTests {

}
