package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class SignatureChecklistOnPostgresIntegrationTests extends SignatureChecklistIntegrationTests {

}
