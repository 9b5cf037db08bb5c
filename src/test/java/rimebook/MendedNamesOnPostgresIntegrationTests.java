package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class MendedNamesOnPostgresIntegrationTests extends MendedNamesIntegrationTests {

}
