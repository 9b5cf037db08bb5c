package rimebook.managers;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ManagersOnPostgresIntegrationTests extends ManagersIntegrationTests {

}
