package rimebook.performances;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class CardReopeningOnPostgresIntegrationTests extends CardReopeningIntegrationTests {

}
