package rimebook.audit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;

/**
 * The record outside its database: writes its lines to a file, follows them there, and
 * puts them into an empty database as they are. A line about something that does not come
 * along is written as its link alone, so that the chain stays whole.
 */
public final class RecordCopy {

	private static final int AT_ONCE = 500;

	private static final String FULL = "insert into record_line (number, form, written_at, actor, actor_id, role, "
			+ "device, subject, subject_id, action, before_text, after_text, reason, evidence, previous_digest, digest) "
			+ "values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

	private RecordCopy() {
	}

	/**
	 * Write every line as an object of JSON, oldest first.
	 * @param out where to, UTF-8, left open
	 * @param elsewhere tells by the identity of its subject whether a line is written as
	 * its link alone
	 * @return the end of the chain that was written
	 */
	public static RecordVerification.Head write(Connection connection, OutputStream out, Predicate<String> elsewhere)
			throws SQLException, IOException {
		RecordVerification.Head head = new RecordVerification.Head(0, ChainDigest.START);
		List<RecordLine> some;
		do {
			some = RecordLineReader.after(connection, head.lines());
			for (RecordLine line : some) {
				RecordLine shown = elsewhere.test(line.thing().subjectId()) ? RecordLine.alone(line.link()) : line;
				out.write((RecordJson.write(shown) + "\n").getBytes(StandardCharsets.UTF_8));
				head = new RecordVerification.Head(line.number(), line.link().digest());
			}
		}
		while (!some.isEmpty());
		return head;
	}

	/** Follow lines as they were written, from the first to the last. */
	public static RecordFinding check(BufferedReader lines) throws IOException {
		RecordVerification.Head good = new RecordVerification.Head(0, ChainDigest.START);
		long alone = 0;
		for (String text = lines.readLine(); text != null; text = lines.readLine()) {
			RecordLine line = line(text);
			String why = (line != null) ? ChainCheck.fault(line, good) : "it is none.";
			if (line == null || why != null) {
				return RecordFinding.broken(good, good.lines() + 1, String.valueOf(why));
			}
			good = new RecordVerification.Head(line.number(), line.link().digest());
			alone += line.link().isAlone() ? 1 : 0;
		}
		return RecordFinding.whole(good.lines(), good.digest(), alone);
	}

	private static @Nullable RecordLine line(String text) {
		try {
			return RecordJson.read(text);
		}
		catch (RuntimeException ex) {
			return null;
		}
	}

	/**
	 * Put lines that {@link #check} found whole into a record that is empty. The caller
	 * commits.
	 */
	public static void restore(Connection connection, BufferedReader lines) throws SQLException, IOException {
		List<RecordLine> some = new ArrayList<>();
		RecordLine last = null;
		long alone = 0;
		for (String text = lines.readLine(); text != null; text = lines.readLine()) {
			last = RecordJson.read(text);
			some.add(last);
			alone += last.link().isAlone() ? 1 : 0;
			if (some.size() == AT_ONCE) {
				insert(connection, some);
			}
		}
		insert(connection, some);
		if (last != null) {
			end(connection, last, alone);
		}
	}

	private static void insert(Connection connection, List<RecordLine> some) throws SQLException {
		try (PreparedStatement insert = connection.prepareStatement(FULL)) {
			for (RecordLine line : some) {
				Object[] values = { line.number(), line.link().form(),
						OffsetDateTime.ofInstant(line.writtenAt(), ZoneOffset.UTC), line.who().actor(),
						line.who().actorId(), line.who().role(), line.who().device(), line.thing().subject(),
						line.thing().subjectId(), line.change().action(), line.change().before(), line.change().after(),
						line.change().reason(), line.thing().evidence(), line.link().previousDigest(),
						line.link().digest() };
				for (int i = 0; i < values.length; i++) {
					insert.setObject(i + 1, values[i]);
				}
				insert.addBatch();
			}
			insert.executeBatch();
		}
		some.clear();
	}

	private static void end(Connection connection, RecordLine last, long alone) throws SQLException {
		try (PreparedStatement update = connection
			.prepareStatement("update record_head set number = ?, digest = ?, alone = ? where id = 1")) {
			update.setLong(1, last.number());
			update.setString(2, last.link().digest());
			update.setLong(3, alone);
			update.executeUpdate();
		}
	}

}
