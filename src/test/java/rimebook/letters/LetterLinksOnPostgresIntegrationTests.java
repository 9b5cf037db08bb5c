package rimebook.letters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class LetterLinksOnPostgresIntegrationTests extends LetterLinksIntegrationTests {

}
