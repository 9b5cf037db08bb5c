package rimebook.performances;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ReskatesOnPostgresIntegrationTests extends ReskatesIntegrationTests {

}
