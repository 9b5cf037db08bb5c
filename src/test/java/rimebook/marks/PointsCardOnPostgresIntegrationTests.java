package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PointsCardOnPostgresIntegrationTests extends PointsCardIntegrationTests {

}
