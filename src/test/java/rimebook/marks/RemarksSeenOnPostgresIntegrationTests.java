package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RemarksSeenOnPostgresIntegrationTests extends RemarksSeenIntegrationTests {

}
