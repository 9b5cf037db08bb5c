package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PanelChangesOnPostgresIntegrationTests extends PanelChangesIntegrationTests {

}
