package rimebook.standby;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationStartedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/** The lives of this database; the newest is the one that goes on. */
@Component
class ServiceLives implements InitializingBean {

	private static final String ALL = """
			select number, id, began_at, copy_name, copy_folder, known_until, known_line, seen_at, seen_line
			from service_life order by number""";

	private final JdbcClient database;

	private final JdbcTemplate jdbc;

	private final RecordTail tail;

	private final Acts acts;

	private final Clock clock;

	private final TransactionTemplate transaction;

	private final String restoredUntil;

	/** Nothing changes in them while the service runs. */
	private List<ServiceLife> known = List.of();

	ServiceLives(JdbcTemplate jdbc, RecordTail tail, Acts acts, Clock clock, TransactionTemplate transaction,
			@Value("${restored-until:}") String restoredUntil) {
		this.database = JdbcClient.create(jdbc);
		this.jdbc = jdbc;
		this.tail = tail;
		this.acts = acts;
		this.clock = clock;
		this.transaction = transaction;
		this.restoredUntil = restoredUntil;
	}

	@Override
	public void afterPropertiesSet() {
		if (all().isEmpty()) {
			begin();
		}
		if (!this.restoredUntil.isBlank()) {
			beginAgain(moment(this.restoredUntil.strip()));
		}
		this.known = List.copyOf(all());
	}

	/** Put on the record that one began from a copy, once everybody listens. */
	@EventListener(ApplicationStartedEvent.class)
	void started() {
		this.transaction.executeWithoutResult((status) -> note());
	}

	private void begin() {
		try {
			this.database.sql("""
					insert into service_life (number, id, began_at, copy_name, copy_folder, noted)
					values (1, ?, ?, '', '', true)""")
				.params(this.acts.nextId(), OffsetDateTime.ofInstant(this.clock.instant(), ZoneOffset.UTC))
				.update();
		}
		catch (DuplicateKeyException ex) {
			// Another node began it in this moment.
			return;
		}
	}

	/**
	 * Whoever restored the database with its own tools says until when it knows
	 * everything. Said again with the next start it changes nothing.
	 */
	private void beginAgain(Instant until) {
		String copy = "own tools, " + until;
		boolean known = all().stream().anyMatch((life) -> life.from() != null && life.from().copy().equals(copy));
		if (!known) {
			RecordHead head = this.tail.head();
			ServiceLife.Origin from = new ServiceLife.Origin(copy, "", until, head.line(), until, head.line());
			begin(from);
		}
	}

	private void begin(ServiceLife.Origin from) {
		try {
			this.jdbc.execute((ConnectionCallback<Boolean>) (connection) -> {
				LifeRows.begin(connection, this.acts.nextId(), this.clock.instant(), from, List.of());
				return true;
			});
		}
		catch (DuplicateKeyException ex) {
			// Another node was told the same and began it in this moment.
			return;
		}
	}

	private static Instant moment(String text) {
		try {
			return Instant.parse(text);
		}
		catch (DateTimeParseException ex) {
			throw CopyRefusedException.noMoment(text);
		}
	}

	private void note() {
		int now = this.database.sql("update service_life set noted = true where noted = false").update();
		ServiceLife.Origin from = current().from();
		if (now > 0 && from != null) {
			this.acts.publish(AuditedChange.of(Actor.system(), "service", "this service", "service.started-from-copy")
				.from("last sign at " + from.seenAt() + ", line " + from.seenLine(),
						"known until " + from.knownUntil() + ", line " + from.knownLine())
				.because("copy " + from.copy()));
		}
	}

	/** The one that goes on. */
	ServiceLife current() {
		return this.known.get(this.known.size() - 1);
	}

	/** All of them, the first one first. */
	List<ServiceLife> known() {
		return this.known;
	}

	/** Their identities as tablets are told them, the newest first. */
	String header() {
		return this.known.stream()
			.sorted(Comparator.comparing(ServiceLife::number).reversed())
			.map((life) -> life.id().toString())
			.collect(Collectors.joining(" "));
	}

	private List<ServiceLife> all() {
		return this.database.sql(ALL).query((row, at) -> life(row)).list();
	}

	private static ServiceLife life(ResultSet row) throws SQLException {
		return new ServiceLife(row.getInt(1), row.getObject(2, UUID.class), instant(row, 3),
				row.getString(4).isEmpty() ? null : origin(row));
	}

	private static ServiceLife.@Nullable Origin origin(ResultSet row) throws SQLException {
		return new ServiceLife.Origin(row.getString(4), row.getString(5), instant(row, 6), row.getLong(7),
				instant(row, 8), row.getLong(9));
	}

	private static Instant instant(ResultSet row, int column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

}
