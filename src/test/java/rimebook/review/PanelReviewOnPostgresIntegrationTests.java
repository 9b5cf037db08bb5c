package rimebook.review;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PanelReviewOnPostgresIntegrationTests extends PanelReviewIntegrationTests {

}
