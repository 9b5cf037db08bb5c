package rimebook.accounts;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class FormerPasswordsOnPostgresIntegrationTests extends FormerPasswordsIntegrationTests {

}
