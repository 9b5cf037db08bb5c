package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A record in the hands of somebody who may do everything with the database: takes it
 * apart and puts it together again, on a connection whose work is rolled back.
 */
final class TamperedRecord {

	private final Connection connection;

	private List<Anchor> anchors;

	TamperedRecord(Connection connection, List<Anchor> anchors) {
		this.connection = connection;
		this.anchors = anchors;
	}

	Connection connection() {
		return this.connection;
	}

	/** What is kept outside. */
	List<Anchor> anchors() {
		return this.anchors;
	}

	/** Only these were kept. */
	void keepOnly(List<Anchor> kept) {
		this.anchors = List.copyOf(kept);
	}

	void sql(String... statements) throws SQLException {
		try (Statement statement = this.connection.createStatement()) {
			for (String sql : statements) {
				int rows = statement.executeUpdate(sql);
				if (rows == 0) {
					throw new IllegalStateException("Nothing is changed by " + sql);
				}
			}
		}
	}

	/** Delete whatever stands in these, one after the other. */
	void empty(List<String> tables) throws SQLException {
		try (Statement statement = this.connection.createStatement()) {
			for (String table : tables) {
				statement.executeUpdate("delete from " + table);
			}
		}
	}

	/** Put other lines in place of all, as they are given. */
	void lines(UnaryOperator<List<RecordLine>> change) throws SQLException {
		List<RecordLine> lines = change.apply(new ArrayList<>(lines()));
		try (Statement statement = this.connection.createStatement()) {
			statement.executeUpdate("delete from record_line");
		}
		for (RecordLine line : lines) {
			insert(line);
		}
	}

	/** The same, with each line linked to the one before it, and the head to the last. */
	void wholeChain(UnaryOperator<List<RecordLine>> change) throws SQLException {
		lines((lines) -> linked(change.apply(lines)));
		headAtTheEnd();
	}

	/** Append a line as the service does, when the clock says that time. */
	void append(Instant time) throws SQLException {
		wholeChain((lines) -> {
			lines.add(at(lines.get(lines.size() - 1), time));
			return lines;
		});
	}

	void headAtTheEnd() throws SQLException {
		List<RecordLine> lines = lines();
		String digest = lines.isEmpty() ? ChainDigest.START : lines.get(lines.size() - 1).link().digest();
		sql("update record_head set number = " + lines.size() + ", digest = '" + digest + "'");
	}

	List<RecordLine> lines() throws SQLException {
		List<RecordLine> all = new ArrayList<>();
		List<RecordLine> some = RecordLineReader.after(this.connection, 0);
		while (!some.isEmpty()) {
			all.addAll(some);
			some = RecordLineReader.after(this.connection, all.get(all.size() - 1).number());
		}
		return all;
	}

	/** The last line as an anchor, as a device has it at that time. */
	Anchor seen(Instant at) throws SQLException {
		RecordLine last = lines().get(lines().size() - 1);
		return new Anchor(last.number(), last.link().digest(), last.writtenAt(), "", at);
	}

	static List<RecordLine> linked(List<RecordLine> lines) {
		List<RecordLine> linked = new ArrayList<>();
		String before = ChainDigest.START;
		for (RecordLine line : lines) {
			RecordLine next = numbered(line, linked.size() + 1, before).sealed();
			linked.add(next);
			before = next.link().digest();
		}
		return linked;
	}

	static RecordLine numbered(RecordLine line, long number, String before) {
		return new RecordLine(new RecordLine.Link(number, line.link().form(), before, line.link().digest()),
				line.writtenAt(), line.who(), line.thing(), line.change());
	}

	static RecordLine by(RecordLine line, String actor) {
		return new RecordLine(line.link(), line.writtenAt(),
				new RecordLine.Who(actor, line.who().actorId(), line.who().role(), line.who().device()), line.thing(),
				line.change());
	}

	static RecordLine saying(RecordLine line, String after) {
		return new RecordLine(line.link(), line.writtenAt(), line.who(), line.thing(),
				new RecordLine.Change(line.change().action(), line.change().before(), after, line.change().reason()));
	}

	static RecordLine at(RecordLine line, Instant time) {
		return new RecordLine(line.link(), time, line.who(), line.thing(), line.change());
	}

	static RecordLine later(RecordLine line, Duration by) {
		return at(line, line.writtenAt().plus(by));
	}

	/** As lines were before there were identities. */
	static RecordLine ofFirstForm(RecordLine line) {
		return new RecordLine(
				new RecordLine.Link(line.number(), RecordLine.FORM_WITHOUT_ID, line.link().previousDigest(), ""),
				line.writtenAt(), new RecordLine.Who(line.who().actor(), "", line.who().role(), line.who().device()),
				new RecordLine.Thing(line.thing().subject(), line.thing().subjectId(), ""), line.change());
	}

	static List<RecordLine> exchanged(List<RecordLine> lines, int one, int other) {
		RecordLine first = Objects.requireNonNull(lines.get(one));
		lines.set(one, lines.get(other));
		lines.set(other, first);
		return lines;
	}

	private void insert(RecordLine line) throws SQLException {
		try (PreparedStatement insert = this.connection.prepareStatement("""
				insert into record_line (number, form, written_at, actor, actor_id, role, device, subject, subject_id,
				action, before_text, after_text, reason, evidence, previous_digest, digest)
				values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")) {
			insert.setLong(1, line.number());
			insert.setInt(2, line.link().form());
			insert.setObject(3, OffsetDateTime.ofInstant(line.writtenAt(), ZoneOffset.UTC));
			String[] texts = { line.who().actor(), line.who().actorId(), line.who().role(), line.who().device(),
					line.thing().subject(), line.thing().subjectId(), line.change().action(), line.change().before(),
					line.change().after(), line.change().reason(), line.thing().evidence(),
					line.link().previousDigest(), line.link().digest() };
			for (int text = 0; text < texts.length; text++) {
				insert.setString(text + 4, texts[text]);
			}
			insert.executeUpdate();
		}
	}

}
