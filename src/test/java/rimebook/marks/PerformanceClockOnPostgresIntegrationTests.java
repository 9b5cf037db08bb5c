package rimebook.marks;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class PerformanceClockOnPostgresIntegrationTests extends PerformanceClockIntegrationTests {

}
