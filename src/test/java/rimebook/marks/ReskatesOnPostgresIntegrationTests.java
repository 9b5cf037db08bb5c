package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ReskatesOnPostgresIntegrationTests extends ReskatesIntegrationTests {

}
