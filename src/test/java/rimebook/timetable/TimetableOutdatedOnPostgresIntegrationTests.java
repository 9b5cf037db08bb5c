package rimebook.timetable;

import rimebook.testsupport.OnPostgres;

@OnPostgres
class TimetableOutdatedOnPostgresIntegrationTests extends TimetableOutdatedIntegrationTests {

}
