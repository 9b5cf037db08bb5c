package rimebook.live;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class MomentReaderOnPostgresIntegrationTests extends MomentReaderIntegrationTests {

}
