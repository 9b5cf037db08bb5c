package rimebook.audit;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RecordAnchorsOnPostgresIntegrationTests extends RecordAnchorsIntegrationTests {

}
