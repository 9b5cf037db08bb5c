package rimebook.rehearsal;

import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.testsupport.OnPostgres;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

/**
 * The copy comes out of the other database, is of an event that is judged by points, and
 * the process is killed in the end.
 */
@OnPostgres
class RehearsalOnPostgresIntegrationTests extends RehearsalIntegrationTests {

	@Override
	SmallCompetition competition(ApplicationContext context) {
		SmallCompetition competition = SmallCompetition.running(context, 2,
				CompetitionFixtures.aPointsEvent("Novice", 3));
		competition.seatRest();
		return competition;
	}

	@Override
	void finish(Visitor referee, Visitor.Page runs) {
		process().destroyForcibly();
		await(referee, "It ended by itself");
	}

}
