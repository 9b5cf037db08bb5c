package rimebook.fees;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class FeesOnPostgresIntegrationTests extends FeesIntegrationTests {

}
