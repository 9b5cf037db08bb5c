package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PaperKeyingOnPostgresIntegrationTests extends PaperKeyingIntegrationTests {

}
