package rimebook.accounts;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class CodesAtRestOnPostgresIntegrationTests extends CodesAtRestIntegrationTests {

}
