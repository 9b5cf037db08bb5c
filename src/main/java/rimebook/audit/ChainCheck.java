package rimebook.audit;

import java.sql.Connection;
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

	private RecordHead good = new RecordHead(0, ChainDigest.START);

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
		RecordHead head = null;
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

	private RecordFinding compare(RecordHead head) {
		if (head.lines() < this.good.lines()) {
			return broken(head.lines() + 1, "this line stands after the end of the chain.");
		}
		if (!head.digest().equals(this.good.digest())) {
			return broken(Math.max(head.lines(), 1), "the end of the chain names another digest than this line.");
		}
		return RecordFinding.whole(this.good.lines(), this.good.digest());
	}

	private @Nullable RecordFinding followLines() throws SQLException {
		List<RecordLine> some;
		do {
			some = RecordLines.after(this.connection, this.good.lines());
			for (RecordLine line : some) {
				String why = fault(line);
				if (why != null) {
					return broken(Math.min(line.number(), this.good.lines() + 1), why);
				}
				this.good = new RecordHead(line.number(), line.digest());
			}
		}
		while (some.size() == RecordLines.AT_ONCE);
		return null;
	}

	private @Nullable String fault(RecordLine line) {
		if (line.number() != this.good.lines() + 1) {
			return "this line is missing.";
		}
		if (!line.previousDigest().equals(this.good.digest())) {
			return "it does not follow from the line before it.";
		}
		return line.digest().equals(ChainDigest.of(line)) ? null : "it was changed after it was written.";
	}

	private RecordFinding broken(long line, String why) {
		return RecordFinding.broken(this.good, line, why);
	}

	private RecordHead head() throws SQLException {
		try (Statement statement = this.connection.createStatement();
				ResultSet row = statement.executeQuery("select number, digest from record_head where id = 1")) {
			return row.next() ? new RecordHead(row.getLong(1), row.getString(2)) : new RecordHead(0, "");
		}
	}

}
