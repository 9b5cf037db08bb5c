package rimebook.panels;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class GuessedCodesOnPostgresIntegrationTests extends GuessedCodesIntegrationTests {

}
