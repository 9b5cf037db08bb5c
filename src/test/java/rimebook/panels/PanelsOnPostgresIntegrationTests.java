package rimebook.panels;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PanelsOnPostgresIntegrationTests extends PanelsIntegrationTests {

}
