package rimebook.points;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class TechnicalDeskOnPostgresIntegrationTests extends TechnicalDeskIntegrationTests {

}
