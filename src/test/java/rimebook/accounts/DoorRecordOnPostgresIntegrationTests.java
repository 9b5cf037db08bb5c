package rimebook.accounts;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class DoorRecordOnPostgresIntegrationTests extends DoorRecordIntegrationTests {

}
