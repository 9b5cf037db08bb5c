package rimebook.rosters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class RosterPortionsOnPostgresIntegrationTests extends RosterPortionsIntegrationTests {

}
