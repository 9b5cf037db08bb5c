package rimebook.music;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class MusicOnPostgresIntegrationTests extends MusicIntegrationTests {

}
