package rimebook.audit;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;

import jakarta.persistence.EntityManager;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

/** Writes the next line. Whoever appends holds the head of the chain until the commit. */
@Component
class RecordAppender {

	private static final String INSERT = """
			insert into record_line (number, form, written_at, actor, actor_id, role, device, subject, subject_id,
			action, before_text, after_text, reason, evidence, previous_digest, digest)
			values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

	private final JdbcClient database;

	private final JdbcTemplate jdbc;

	private final EntityManager entities;

	private final Clock clock;

	RecordAppender(JdbcTemplate jdbc, EntityManager entities, Clock clock) {
		this.database = JdbcClient.create(jdbc);
		this.jdbc = jdbc;
		this.entities = entities;
		this.clock = clock;
	}

	/**
	 * Append the change. What else the transaction has to write is written first, so that
	 * nobody holds the head while waiting for another row.
	 */
	void append(AuditedChange change) {
		this.entities.flush();
		RecordVerification.Head head = lockHead();
		RecordLine line = line(head, change, this.clock.instant().truncatedTo(ChronoUnit.MILLIS), evidence(change));
		insert(line);
		this.database.sql("update record_head set number = ?, digest = ? where id = 1")
			.params(line.number(), line.link().digest())
			.update();
	}

	private RecordVerification.Head lockHead() {
		return this.database.sql("select number, digest from record_head where id = 1 for update")
			.query((row, at) -> new RecordVerification.Head(row.getLong(1), row.getString(2)))
			.single();
	}

	/**
	 * Read after the head is held: whatever another transaction wrote of the same thing
	 * is there by then.
	 */
	private String evidence(AuditedChange change) {
		ConnectionCallback<String> read = (connection) -> Evidence.of(connection, change.subject(), change.subjectId());
		String evidence = this.jdbc.execute(read);
		return (evidence != null) ? evidence : "";
	}

	private static RecordLine line(RecordVerification.Head head, AuditedChange change, Instant now, String evidence) {
		Actor actor = change.actor();
		return new RecordLine(new RecordLine.Link(head.lines() + 1, RecordLine.FORM, head.digest(), ""), now,
				new RecordLine.Who(kept(actor.name()), kept(actor.id()), kept(actor.role()), kept(actor.device())),
				new RecordLine.Thing(kept(change.subject()), kept(change.subjectId()), evidence), new RecordLine.Change(
						kept(change.action()), kept(change.before()), kept(change.after()), kept(change.reason())))
			.sealed();
	}

	/**
	 * The text as every database gives it back: NUL and halves of a character become the
	 * replacement mark.
	 */
	private static String kept(String text) {
		String whole = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
		return whole.replace('\0', '\uFFFD');
	}

	private void insert(RecordLine line) {
		this.database.sql(INSERT)
			.params(line.number(), line.link().form(), OffsetDateTime.ofInstant(line.writtenAt(), ZoneOffset.UTC),
					line.who().actor(), line.who().actorId(), line.who().role(), line.who().device(),
					line.thing().subject(), line.thing().subjectId(), line.change().action(), line.change().before(),
					line.change().after(), line.change().reason(), line.thing().evidence(),
					line.link().previousDigest(), line.link().digest())
			.update();
	}

}
