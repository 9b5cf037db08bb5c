package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RacesOnPostgresIntegrationTests extends RacesIntegrationTests {

}
