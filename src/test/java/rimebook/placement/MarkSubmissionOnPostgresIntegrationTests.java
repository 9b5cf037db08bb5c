package rimebook.placement;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class MarkSubmissionOnPostgresIntegrationTests extends MarkSubmissionIntegrationTests {

}
