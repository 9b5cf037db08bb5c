package rimebook.performances;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PanelChangesOnPostgresIntegrationTests extends PanelChangesIntegrationTests {

}
