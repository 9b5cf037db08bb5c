package rimebook.cli;

import java.sql.SQLException;
import java.util.Set;

/** Why a database cannot be used, for people. */
final class DatabaseAnswer {

	private static final int IN_USE = 90020;

	private static final Set<Integer> NOT_THERE = Set.of(90146, 90124);

	/** No such table, as H2 and PostgreSQL say it. */
	private static final Set<String> NO_RECORD = Set.of("42S02", "42S04", "42P01");

	private DatabaseAnswer() {
	}

	/** Tell whether there is no database; one of H2 can then be made. */
	static boolean isNotThere(SQLException refused) {
		return NOT_THERE.contains(refused.getErrorCode());
	}

	/**
	 * @param instead what to do while a Rimebook runs on the database, beside stopping it
	 */
	static String why(SQLException refused, String instead) {
		if (refused.getErrorCode() == IN_USE) {
			return "a running Rimebook uses this database. Stop it first" + instead + ".";
		}
		if (isNotThere(refused)) {
			return "there is no database here. Start the command where Rimebook is started, or name it with --url.";
		}
		if (NO_RECORD.contains(refused.getSQLState())) {
			return "this database holds no record of Rimebook.";
		}
		return "cannot be read: " + refused.getMessage();
	}

}
