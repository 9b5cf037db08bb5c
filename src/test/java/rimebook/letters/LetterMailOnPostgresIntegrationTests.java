package rimebook.letters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class LetterMailOnPostgresIntegrationTests extends LetterMailIntegrationTests {

}
