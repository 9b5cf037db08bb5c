package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class CardReopeningOnPostgresIntegrationTests extends CardReopeningIntegrationTests {

}
