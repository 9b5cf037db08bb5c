package rimebook.rulings;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RulingsOnPostgresIntegrationTests extends RulingsIntegrationTests {

}
