package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Follows the chain from line 1 to its end. Needs a connection and nothing else; reads a
 * few hundred lines at a time, and may run while lines are appended.
 */
public final class ChainCheck {

	private final Connection connection;

	private RecordVerification.Head good = new RecordVerification.Head(0, ChainDigest.START);

	private long alone;

	private long firstAlone;

	private ChainCheck(Connection connection) {
		this.connection = connection;
	}

	/**
	 * Check every line.
	 * @param connection an open connection to the database, left open
	 * @throws SQLException if the record cannot be read
	 */
	public static RecordFinding check(Connection connection) throws SQLException {
		return new ChainCheck(connection).run();
	}

	/**
	 * Lines and head are written together, so a head that is further on than the lines
	 * read before it only means that there is more to read.
	 */
	private RecordFinding run() throws SQLException {
		RecordVerification.Head head = null;
		while (true) {
			long before = this.good.lines();
			RecordFinding broken = followLines();
			if (broken != null) {
				return broken;
			}
			if (head != null && head.lines() > this.good.lines() && before == this.good.lines()) {
				return broken(this.good.lines() + 1, "this line is missing at the end.");
			}
			head = head();
			if (head.lines() <= this.good.lines()) {
				return compare(head);
			}
		}
	}

	private RecordFinding compare(RecordVerification.Head head) throws SQLException {
		if (head.lines() < this.good.lines()) {
			return broken(head.lines() + 1, "this line stands after the end of the chain.");
		}
		if (!head.digest().equals(this.good.digest())) {
			return broken(Math.max(head.lines(), 1), "the end of the chain names another digest than this line.");
		}
		if (this.alone != restoredAlone()) {
			return broken(Math.max(this.firstAlone, 1), "what it told was taken out; only its digest is here.");
		}
		return RecordFinding.whole(this.good.lines(), this.good.digest(), this.alone);
	}

	private @Nullable RecordFinding followLines() throws SQLException {
		List<RecordLine> some;
		do {
			some = RecordLineReader.after(this.connection, afterGood());
			for (RecordLine line : some) {
				String why = fault(line);
				if (why != null) {
					return broken(Math.min(line.number(), this.good.lines() + 1), why);
				}
				this.good = new RecordVerification.Head(line.number(), line.link().digest());
				countAlone(line);
			}
		}
		while (some.size() == RecordLineReader.AT_ONCE);
		return null;
	}

	/** Whatever stands before line 1 does not belong there. */
	private long afterGood() {
		return (this.good.lines() == 0) ? Long.MIN_VALUE : this.good.lines();
	}

	private void countAlone(RecordLine line) {
		if (line.link().isAlone()) {
			this.alone++;
			this.firstAlone = (this.alone == 1) ? line.number() : this.firstAlone;
		}
	}

	/** How many lines came without their content when the database was restored. */
	private long restoredAlone() throws SQLException {
		try (Statement statement = this.connection.createStatement();
				ResultSet row = statement.executeQuery("select * from record_head where id = 1")) {
			return (row.next() && RecordLineReader.hasColumn(row.getMetaData(), "alone")) ? row.getLong("alone") : 0;
		}
	}

	private @Nullable String fault(RecordLine line) {
		return fault(line, this.good);
	}

	/** What is wrong with a line that comes after those, {@code null} for nothing. */
	static @Nullable String fault(RecordLine line, RecordVerification.Head good) {
		if (line.number() < 1) {
			return "it stands before the first line.";
		}
		if (line.number() != good.lines() + 1) {
			return "this line is missing.";
		}
		if (!line.link().previousDigest().equals(good.digest())) {
			return "it does not follow from the line before it.";
		}
		return line.isAsWritten() ? null : "it was changed after it was written.";
	}

	private RecordFinding broken(long line, String why) {
		return RecordFinding.broken(this.good, line, why);
	}

	private RecordVerification.Head head() throws SQLException {
		try (Statement statement = this.connection.createStatement();
				ResultSet row = statement.executeQuery("select number, digest from record_head where id = 1")) {
			return row.next() ? new RecordVerification.Head(row.getLong(1), row.getString(2))
					: new RecordVerification.Head(0, "");
		}
	}

	/**
	 * A head that was kept elsewhere, such as on a signed sheet, looked up in a chain
	 * that is whole. If it is the digest of a line, that line and all before it are the
	 * same as when the head was kept; if it is not, the record was written anew, or is
	 * another one.
	 *
	 * @param line the line whose digest begins with the head, 0 if there is none
	 * @param since how many lines were written after it
	 */
	public record ExpectedHead(long line, long since) {

		private static final String DIGITS = "[0-9a-f]{12,64}";

		/**
		 * Tell whether that can be a head, or its first digits: 12 to 64 of 0-9 and a-f.
		 */
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
				return "The expected head is not that of any line: the record was written anew or cut since, goes on from "
						+ "an earlier copy, or is another one.";
			}
			return "The expected head is that of line " + this.line + ": up to there the record is as it was then"
					+ ((this.since == 0) ? ", and nothing was written since." : "; " + this.since
							+ ((this.since == 1) ? " line was" : " lines were") + " written since.");
		}

	}

}
