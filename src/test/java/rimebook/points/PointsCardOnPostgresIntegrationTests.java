package rimebook.points;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PointsCardOnPostgresIntegrationTests extends PointsCardIntegrationTests {

}
