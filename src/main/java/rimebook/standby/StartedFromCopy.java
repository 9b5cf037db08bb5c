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
		sentences.add("It holds %s, %s and %s whose cards are closed.".formatted(
				counted(count(copy, "select count(*) from competition"), "competition"),
				counted(count(copy,
						"select (select count(*) from card_submission) + (select count(*) from points_card)"), "card"),
				counted(count(copy, "select count(*) from performance where closed_at is not null"), "performance")));
		sentences.add("The service before gave its last sign at %s, line %d: %s and %s of the record are lost."
			.formatted(from.seenAt(), from.seenLine(),
					counted(Duration.between(from.knownUntil(), from.seenAt()).toSeconds(), "second"),
					counted(from.lostLines(), "line")));
		long cards = lost.stream().filter((line) -> line.action().equals("card.received")).count();
		sentences.add(
				"Known of what is lost: %s, among them %s, which the tablets bring back; the others are listed on the page /desk/copy, to be done again."
					.formatted(counted(lost.size(), "line"), counted(cards, "card")));
		return new StartedFromCopy(sentences);
	}

	/** The same with the copies that are not whole. */
	StartedFromCopy passing(List<String> broken) {
		List<String> all = new ArrayList<>();
		broken.forEach((one) -> all.add("Passed over, since it is not whole: " + one));
		all.addAll(this.sentences);
		return new StartedFromCopy(all);
	}

	private static String counted(long number, String word) {
		return number + " " + word + ((number == 1) ? "" : "s");
	}

	private static long count(Connection copy, String query) throws SQLException {
		try (Statement statement = copy.createStatement(); ResultSet row = statement.executeQuery(query)) {
			row.next();
			return row.getLong(1);
		}
	}

}
