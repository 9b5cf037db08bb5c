package rimebook.protests;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class StatusCorrectionsOnPostgresIntegrationTests extends StatusCorrectionsIntegrationTests {

}
