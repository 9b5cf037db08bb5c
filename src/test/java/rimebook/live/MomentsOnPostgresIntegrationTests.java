package rimebook.live;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class MomentsOnPostgresIntegrationTests extends MomentsIntegrationTests {

}
