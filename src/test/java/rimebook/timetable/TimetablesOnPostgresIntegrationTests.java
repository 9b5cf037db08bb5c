package rimebook.timetable;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class TimetablesOnPostgresIntegrationTests extends TimetablesIntegrationTests {

}
