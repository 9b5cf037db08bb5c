package rimebook.paper;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PaperKeyingOnPostgresIntegrationTests extends PaperKeyingIntegrationTests {

}
