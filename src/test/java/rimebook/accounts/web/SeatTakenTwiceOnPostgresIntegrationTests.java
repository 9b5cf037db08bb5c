package rimebook.accounts.web;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class SeatTakenTwiceOnPostgresIntegrationTests extends SeatTakenTwiceIntegrationTests {

}
