package rimebook;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PointsSegmentOnPostgresIntegrationTests extends PointsSegmentIntegrationTests {

}
