package rimebook.music;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class SpokenNamesOnPostgresIntegrationTests extends SpokenNamesIntegrationTests {

}
