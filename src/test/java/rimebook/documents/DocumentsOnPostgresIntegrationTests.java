package rimebook.documents;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class DocumentsOnPostgresIntegrationTests extends DocumentsIntegrationTests {

}
