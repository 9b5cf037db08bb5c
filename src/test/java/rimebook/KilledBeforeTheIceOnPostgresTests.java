package rimebook;

import java.util.List;

import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;

/** There the music lies in the database. */
@RequiresDocker
class KilledBeforeTheIceOnPostgresTests extends KilledBeforeTheIceTests {

	@Override
	List<String> database() {
		return PostgresDatabase.create().asProperties();
	}

}
