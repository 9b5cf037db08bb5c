package rimebook.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;

import rimebook.audit.ChainCheck;
import rimebook.audit.RecordFinding;

/** Follows the chain of the record without starting the service. */
final class VerifyRecordCommand implements SubCommand {

	private static final int IN_USE = 90020;

	private static final Set<Integer> NOT_THERE = Set.of(90146, 90124);

	/** No such table, as H2 and PostgreSQL say it. */
	private static final Set<String> NO_RECORD = Set.of("42S02", "42S04", "42P01");

	private static final String USAGE = """
			usage: java -jar rimebook.jar verify-record [options]

			Reads the record from its first line to its last and says whether every line is as it
			was written. Changes nothing. Status 0: the record is whole; 1: it is broken, and the
			answer names the first line that is not as it was written; 2: it cannot be read.

			Without options it reads the database that the service would use.
			  --url URL            JDBC address, or SPRING_DATASOURCE_URL
			  --user NAME          or SPRING_DATASOURCE_USERNAME
			  --password PASSWORD  or SPRING_DATASOURCE_PASSWORD, which others cannot see

			An H2 file can be read while no Rimebook runs on it; the page "Record" of a running one
			has a button that does the same.
			""";

	@Override
	public String name() {
		return "verify-record";
	}

	@Override
	public String summary() {
		return "tells whether every line of the record is as it was written";
	}

	@Override
	public String usage() {
		return USAGE;
	}

	@Override
	public int run(List<String> args, PrintStream out, PrintStream err) {
		try {
			RecordFinding finding = check(address(args));
			out.print(finding.sentence() + "\n");
			return finding.isWhole() ? CommandLine.DONE : CommandLine.BROKEN;
		}
		catch (UsageException ex) {
			err.print("rimebook verify-record: " + ex.getMessage() + "\n" + USAGE);
		}
		catch (InputException ex) {
			err.print(ex.getMessage() + "\n");
		}
		return CommandLine.REFUSED;
	}

	private static DatabaseAddress address(List<String> args) {
		Arguments typed = new Arguments(args, Set.of("--url", "--user", "--password"));
		if (!typed.rest().isEmpty()) {
			throw new UsageException("there is nothing to do with '" + typed.rest().get(0) + "'");
		}
		return DatabaseAddress.of(typed, System.getenv(), Path.of(""));
	}

	private static RecordFinding check(DatabaseAddress address) {
		try (Connection connection = address.open()) {
			return ChainCheck.check(connection);
		}
		catch (SQLException ex) {
			throw InputException.of(address.shown(), why(ex));
		}
	}

	private static String why(SQLException refused) {
		if (refused.getErrorCode() == IN_USE) {
			return "a running Rimebook uses this database. Stop it first, or press \"Check the chain\" on its page "
					+ "/desk/record.";
		}
		if (NOT_THERE.contains(refused.getErrorCode())) {
			return "there is no database here. Start the command where Rimebook is started, or name it with --url.";
		}
		if (NO_RECORD.contains(refused.getSQLState())) {
			return "this database holds no record of Rimebook.";
		}
		return "cannot be read: " + refused.getMessage();
	}

}
