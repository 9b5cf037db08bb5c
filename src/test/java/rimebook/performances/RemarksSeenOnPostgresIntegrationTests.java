package rimebook.performances;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RemarksSeenOnPostgresIntegrationTests extends RemarksSeenIntegrationTests {

}
