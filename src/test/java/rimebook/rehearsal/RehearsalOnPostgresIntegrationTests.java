package rimebook.rehearsal;

import rimebook.testsupport.OnPostgres;
import rimebook.testsupport.Visitor;

/** The copy comes out of the other database, and the process is killed in the end. */
@OnPostgres
class RehearsalOnPostgresIntegrationTests extends RehearsalIntegrationTests {

	@Override
	void finish(Visitor referee, Visitor.Page runs) {
		process().destroyForcibly();
		await(referee, "It ended by itself");
	}

}
