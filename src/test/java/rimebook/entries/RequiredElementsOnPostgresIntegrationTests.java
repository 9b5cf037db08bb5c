package rimebook.entries;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RequiredElementsOnPostgresIntegrationTests extends RequiredElementsIntegrationTests {

}
