package rimebook.letters;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class LettersOnPostgresIntegrationTests extends LettersIntegrationTests {

}
