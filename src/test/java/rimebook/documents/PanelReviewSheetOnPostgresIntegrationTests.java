package rimebook.documents;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PanelReviewSheetOnPostgresIntegrationTests extends PanelReviewSheetIntegrationTests {

}
