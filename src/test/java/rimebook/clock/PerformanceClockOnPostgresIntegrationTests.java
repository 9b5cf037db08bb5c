package rimebook.clock;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PerformanceClockOnPostgresIntegrationTests extends PerformanceClockIntegrationTests {

}
