package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class TechnicalDeskOnPostgresIntegrationTests extends TechnicalDeskIntegrationTests {

}
