package rimebook.draw;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class StartingOrderDrawOnPostgresIntegrationTests extends StartingOrderDrawIntegrationTests {

}
