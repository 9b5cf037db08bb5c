package rimebook.documents;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PaperBundlesOnPostgresIntegrationTests extends PaperBundlesIntegrationTests {

}
