package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class MarkSubmissionOnPostgresIntegrationTests extends MarkSubmissionIntegrationTests {

}
