package rimebook.arrival;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class ArrivalOnPostgresIntegrationTests extends ArrivalIntegrationTests {

}
