package rimebook.protests;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class CorrectionsOnPostgresIntegrationTests extends CorrectionsIntegrationTests {

}
