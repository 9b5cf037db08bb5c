package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * A head that was kept elsewhere, such as on a signed sheet, looked up in a chain that is
 * whole. If it is the digest of a line, that line and all before it are the same as when
 * the head was kept; if it is not, the record was written anew, or is another one.
 *
 * @param line the line whose digest begins with the head, 0 if there is none
 * @param since how many lines were written after it
 */
public record ExpectedHead(long line, long since) {

	private static final String DIGITS = "[0-9a-f]{12,64}";

	/** Tell whether that can be a head, or its first digits: 12 to 64 of 0-9 and a-f. */
	public static boolean isOne(String head) {
		return head.matches(DIGITS);
	}

	/**
	 * Look it up.
	 * @param head as {@link #isOne} wants it
	 * @param chain what was found of the chain
	 * @throws SQLException if the record cannot be read
	 */
	public static ExpectedHead find(Connection connection, String head, RecordFinding chain) throws SQLException {
		try (PreparedStatement statement = connection
			.prepareStatement("select max(number) from record_line where digest like ? and number <= ?")) {
			statement.setString(1, head + "%");
			statement.setLong(2, chain.lines());
			try (ResultSet row = statement.executeQuery()) {
				long line = row.next() ? row.getLong(1) : 0;
				return new ExpectedHead(line, chain.lines() - line);
			}
		}
	}

	/** Tell whether the record is the one of which the head was kept. */
	public boolean isFound() {
		return this.line > 0;
	}

	/** The answer in one sentence. */
	public String sentence() {
		if (!isFound()) {
			return "The expected head is not that of any line: the record was written anew since, or is another one.";
		}
		return "The expected head is that of line " + this.line + ": up to there the record is as it was then"
				+ ((this.since == 0) ? ", and nothing was written since."
						: "; " + this.since + ((this.since == 1) ? " line was" : " lines were") + " written since.");
	}

}
