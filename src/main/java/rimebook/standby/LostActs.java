package rimebook.standby;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;
import rimebook.shared.SubjectNames;

/**
 * What was done and lost, and what of it is there again. The second act of a kind on one
 * thing is there again when the second was done since; a card when the same marks of the
 * same seat are there. What follows by itself, and who signed in, is left out.
 */
@Component
class LostActs {

	private static final String CARDS = "('card.received', 'card.returned')";

	private static final String LOST = """
			select l.life, l.number, l.written_at, l.actor, l.role, l.subject, l.subject_id, l.action, l.before_text,
			l.after_text, l.reason, l.done_by, l.turn <= (select count(*) from record_line r
			 where r.number > l.known_line and r.subject = l.subject and r.subject_id = l.subject_id
			 and (r.action = l.action and r.action not in %1$s
			 or l.action in %1$s and r.action in %1$s and r.after_text = l.after_text)) as again
			from (select k.*, s.known_line, row_number() over (partition by k.life, k.subject, k.subject_id, k.action,
			 case when k.action in %1$s then k.after_text else '' end order by k.number) as turn
			 from lost_line k join service_life s on s.id = k.life
			 where k.subject not in ('person', 'service')
			 and k.action not in ('result.published', 'remark.seen', 'performance.status-followed')) l
			order by l.life, l.number""".formatted(CARDS);

	private final JdbcClient database;

	private final ServiceLives lives;

	private final ObjectProvider<SubjectNames> names;

	private final Acts acts;

	LostActs(JdbcClient database, ServiceLives lives, ObjectProvider<SubjectNames> names, Acts acts) {
		this.database = database;
		this.lives = lives;
		this.names = names;
		this.acts = acts;
	}

	/** All of them, by the order in which they were done; without names. */
	List<LostAct> all() {
		return this.lives.current().from() == null ? List.of()
				: this.database.sql(LOST).query((row, at) -> act(row)).list();
	}

	/** The same with the names of what they were about. */
	List<LostAct> named() {
		return all().stream()
			.map((act) -> new LostAct(act.life(), act.line(), name(act.line()), act.isAgain(), act.doneBy()))
			.toList();
	}

	/** How many cards came back since the service was started from a copy. */
	int returned() {
		ServiceLife.Origin from = this.lives.current().from();
		return (from == null) ? 0
				: this.database
					.sql("select count(*) from record_line where number > :line and action = 'card.returned'")
					.param("line", from.knownLine())
					.query(Integer.class)
					.single();
	}

	/**
	 * Somebody says that one is settled, whatever is there.
	 * @throws NotFoundException if none of that number was lost
	 */
	@Transactional
	void settle(UUID life, long number, Actor actor) {
		LostLine line = all().stream()
			.filter((act) -> act.life().equals(life) && act.line().number() == number)
			.map(LostAct::line)
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("lost-act", number));
		this.database.sql("update lost_line set done_by = ?, done_at = ? where life = ? and number = ?")
			.params(actor.name(), OffsetDateTime.ofInstant(this.acts.now(), ZoneOffset.UTC), life, number)
			.update();
		this.acts.publish(AuditedChange.of(actor, line.subject(), line.subjectId(), "service.lost-act-settled")
			.from("lost line " + line.number() + ": " + line.action() + " " + line.after(), "settled"));
	}

	private SubjectNames.@Nullable Named name(LostLine line) {
		try {
			UUID id = UUID.fromString(line.subjectId());
			return this.names.stream()
				.flatMap((module) -> module.nameOf(line.subject(), id).stream())
				.findFirst()
				.orElse(null);
		}
		catch (NotFoundException | IllegalArgumentException ex) {
			// It was made after the copy, or its identity is a name.
			return null;
		}
	}

	private static LostAct act(ResultSet row) throws SQLException {
		LostLine line = new LostLine(row.getLong(2), row.getObject(3, OffsetDateTime.class).toInstant(),
				row.getString(4), row.getString(5), row.getString(6), row.getString(7), row.getString(8),
				row.getString(9), row.getString(10), row.getString(11), "");
		return new LostAct(row.getObject(1, UUID.class), line, null, row.getBoolean(13), row.getString(12));
	}

}
