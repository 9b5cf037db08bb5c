package rimebook.standby;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * What a start from a copy says.
 *
 * @param sentences one after the other
 */
record StartedFromCopy(List<String> sentences) {

	/** The database began from there already. */
	static final StartedFromCopy GOES_ON = new StartedFromCopy(
			List.of("The database began from this folder already and goes on as it is; nothing was restored."));

	static StartedFromCopy of(ServiceLife.Origin from, List<LostLine> lost, Connection copy) throws SQLException {
		List<String> sentences = new ArrayList<>();
		sentences.add("Started from the copy %s: everything until %s is there, the record up to line %d."
			.formatted(from.copy(), from.knownUntil(), from.knownLine()));
		sentences.add("It holds %d competitions, %d judges' cards and %d performances whose cards are closed."
			.formatted(count(copy, "select count(*) from competition"),
					count(copy, "select (select count(*) from card_submission) + (select count(*) from points_card)"),
					count(copy, "select count(*) from performance where closed_at is not null")));
		sentences
			.add("The service before gave its last sign at %s, line %d: %d seconds and %d lines of the record are lost."
				.formatted(from.seenAt(), from.seenLine(),
						Duration.between(from.knownUntil(), from.seenAt()).toSeconds(), from.lostLines()));
		long cards = lost.stream().filter((line) -> line.action().equals("card.received")).count();
		sentences.add(
				"Of these lines %d are known, %d of them judges' cards, which the tablets bring back; the others are listed on the page /desk/copy, to be done again."
					.formatted(lost.size(), cards));
		return new StartedFromCopy(sentences);
	}

	/** The same with the copies that are not whole. */
	StartedFromCopy passing(List<String> broken) {
		List<String> all = new ArrayList<>();
		broken.forEach((one) -> all.add("Passed over, since it is not whole: " + one));
		all.addAll(this.sentences);
		return new StartedFromCopy(all);
	}

	private static long count(Connection copy, String query) throws SQLException {
		try (Statement statement = copy.createStatement(); ResultSet row = statement.executeQuery(query)) {
			row.next();
			return row.getLong(1);
		}
	}

}
