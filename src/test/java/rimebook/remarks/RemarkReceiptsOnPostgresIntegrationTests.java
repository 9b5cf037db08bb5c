package rimebook.remarks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RemarkReceiptsOnPostgresIntegrationTests extends RemarkReceiptsIntegrationTests {

}
