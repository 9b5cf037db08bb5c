package rimebook.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import java.util.stream.IntStream;

import javax.sql.DataSource;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Has a database of its own, since it breaks the record and mends it again. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:tampering;DB_CLOSE_DELAY=-1")
class TamperingIntegrationTests {

	private static final String KEYLESS_ROWS = """
			insert into result_version (id, scope, scope_id, number, state, cause, note, published_at, fingerprint, body)
			values (%1$s, 'SEGMENT', %1$s, 1, 'x', 'x', '', current_timestamp, 'f', 'b');
			insert into card_submission
			(id, performance_id, seat_id, sequence, first_mark, second_mark, origin, received_at)
			values (%1$s, %1$s, %1$s, 1, 560, 570, 'x', current_timestamp);
			insert into called_list (id, performance_id, sequence, elements, origin, called_by, received_at)
			values (%1$s, %1$s, 1, '[]', 'x', 'x', current_timestamp);
			insert into points_card (id, performance_id, seat_id, sequence, marks, origin, received_at)
			values (%1$s, %1$s, %1$s, 1, '{}', 'x', current_timestamp);
			insert into deduction_list (id, performance_id, sequence, items, noted_by, received_at)
			values (%1$s, %1$s, 1, '[]', 'x', current_timestamp);
			insert into list_authorisation (id, performance_id, sequence, controller, confirmed_by, on_paper, received_at)
			values (%1$s, %1$s, 1, 'x', 'x', false, current_timestamp);
			insert into card_keying
			(id, performance_id, seat_id, number, keyed_by, marks, outcome, card_sequence, keyed_at)
			values (%1$s, %1$s, %1$s, 1, 'x', '{}', 'x', 0, current_timestamp);
			insert into starting_order
			(id, segment_id, number, method, seed, group_maximum, drawn_at, drawn_by, reason)
			values (%1$s, %1$s, 1, 'x', 'x', 6, current_timestamp, 'x', '');
			insert into start_position (order_id, number, group_number, entry_id, ticket)
			values (%1$s, 1, 1, %1$s, 'x')""";

	@Autowired
	private DataSource dataSource;

	@Autowired
	private RecordVerification verification;

	@Autowired
	private RecordReading reading;

	@Autowired
	private ApplicationEventPublisher events;

	@Autowired
	private PlatformTransactionManager transactions;

	@BeforeEach
	void writeSomeLines() throws SQLException {
		new TransactionTemplate(this.transactions)
			.executeWithoutResult((status) -> IntStream.range(this.lines(), 10).forEach(this::publish));
		run("create table record_copy as select * from record_line",
				"create table head_copy as select * from record_head");
	}

	private int lines() {
		return (int) this.verification.head().lines();
	}

	private void publish(int number) {
		this.events.publishEvent(AuditedChange.of(Actor.system(), "test", number, "test.done").to("text " + number));
	}

	@AfterEach
	void mend() throws SQLException {
		run(dropGuard());
		run("delete from record_head", "insert into record_head select * from head_copy", "drop table head_copy");
		if (!this.verification.verify().isWhole()) {
			run("delete from record_line", "insert into record_line select * from record_copy");
		}
		run("drop table record_copy", dropGuard(), createGuard());
		assertThat(this.verification.verify().isWhole()).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = { "update record_line set reason = 'other' where number = 3",
			"delete from record_line where number = 10", "truncate table record_line",
			"update result_version set body = 'other'", "delete from result_version", "truncate table result_version",
			"update card_submission set first_mark = 600", "delete from card_submission",
			"truncate table card_submission", "update card_keying set marks = 'other'", "delete from card_keying",
			"truncate table card_keying", "update starting_order set seed = 'other'", "delete from starting_order",
			"truncate table starting_order cascade", "update start_position set number = 2",
			"delete from start_position", "truncate table start_position", "update called_list set elements = '[1]'",
			"delete from called_list", "truncate table called_list cascade", "update points_card set marks = '[1]'",
			"delete from points_card", "truncate table points_card", "update deduction_list set items = '[1]'",
			"delete from deduction_list", "truncate table deduction_list",
			"update list_authorisation set controller = 'y'", "delete from list_authorisation",
			"truncate table list_authorisation" })
	void theDatabaseRefuses(String sql) throws SQLException {
		run(switchKeys(false), KEYLESS_ROWS.formatted(freshId()), switchKeys(true));
		assertThatExceptionOfType(SQLException.class).isThrownBy(() -> run(inDialect(sql)))
			.satisfies((ex) -> assertThat(ex.getMessage()).containsAnyOf("keeps what was written", "Cannot truncate"));
	}

	@ParameterizedTest(name = "{0}: line {1}")
	@CsvSource(delimiter = '|', textBlock = """
			update record_line set reason = 'other' where number = 3                        | 3  | was changed
			update record_line set actor = 'somebody else' where number = 10                | 10 | was changed
			update record_line set written_at = current_timestamp where number = 1          | 1  | was changed
			update record_line set actor_id = 'person:other' where number = 7               | 7  | was changed
			update record_line set evidence = 'x' where number = 6                          | 6  | was changed
			update record_line set form = 1 where number = 8                                | 8  | was changed
			update record_line set form = 1, actor_id = '' where number = 9                 | 9  | was changed
			delete from record_line where number = 4                                        | 4  | is missing
			delete from record_line where number = 10                                       | 10 | missing at the end
			delete from record_line                                                         | 1  | missing at the end
			update record_line set number = 99 where number = 10                            | 10 | is missing
			update record_head set number = 9                                               | 10 | after the end
			update record_head set digest = 'x'                                             | 10 | another digest
			delete from record_head                                                         | 1  | after the end
			update record_line set previous_digest = digest where number = 5                | 5  | does not follow
			""")
	void whatIsDoneBehindItsBackIsFound(String sql, long line, String why) throws SQLException {
		withoutGuard(sql);
		RecordFinding finding = this.verification.verify();
		assertThat(finding.isWhole()).isFalse();
		assertThat(finding.why()).contains(why);
		assertThat(finding.firstBroken()).isEqualTo(line);
		assertThat(finding.sentence()).startsWith("The record is broken at line " + line + ": ");
	}

	/** Whoever also makes the digest of the line fit is betrayed by the next line. */
	@Test
	void aForgedDigestBreaksTheNextLine() throws SQLException {
		withoutGuard("update record_line set digest = '%s', reason = 'other' where number = 6".formatted(forged(6)));
		assertThat(this.verification.verify().firstBroken()).isEqualTo(7);
	}

	/** Only a database that was restored has lines that are their links alone. */
	@Test
	void whatALineTellsCannotBeTakenOut() throws SQLException {
		RecordLine alone = RecordLine.alone(new RecordLine.Link(4, 0, "", ""));
		withoutGuard("""
				update record_line set form = 0, written_at = timestamp with time zone '1970-01-01 00:00:00+00',
				actor = '', actor_id = '', role = '', device = '', subject = 'record', subject_id = '', action = '%s',
				before_text = '', after_text = '%s', reason = '', evidence = '' where number = 4"""
			.formatted(alone.change().action(), alone.change().after()));
		assertThat(this.verification.verify().firstBroken()).isEqualTo(4);
		assertThat(this.verification.verify().why()).isEqualTo("what it told was taken out; only its digest is here.");
		withoutGuard("update record_head set alone = 1");
		assertThat(this.verification.verify().sentence()).contains("of 1 of them only the digest is here");
	}

	@Test
	void linesWrittenBeforeThereWereIdentitiesStillVerifyAndAreGoneOnFrom() throws Exception {
		withoutGuard("delete from record_line");
		run(Files.readString(Path.of("src/test/resources/audit/record-of-form-1.sql")).strip());
		assertThat(this.verification.verify()).isEqualTo(RecordFinding.whole(3, this.verification.head().digest()));
		new TransactionTemplate(this.transactions).executeWithoutResult((status) -> publish(4));
		assertThat(this.verification.verify().sentence()).startsWith("The record is whole: 4 lines");
		assertThat(this.reading.read(RecordReading.Query.of("", "", 1)).lines())
			.extracting((record) -> record.who().actorId())
			.containsExactly(Actor.system().id(), "", "", "");
		withoutGuard("update record_line set actor_id = 'person:other' where number = 2");
		assertThat(this.verification.verify().firstBroken()).isEqualTo(2);
	}

	private String forged(long number) throws SQLException {
		try (Connection connection = this.dataSource.getConnection();
				var row = connection.createStatement()
					.executeQuery("select * from record_line where number = " + number)) {
			row.next();
			RecordLine line = RecordLineReader.line(row);
			return ChainDigest.of(new RecordLine(
					new RecordLine.Link(line.number(), line.link().form(), line.link().previousDigest(), ""),
					line.writtenAt(), line.who(), line.thing(), new RecordLine.Change(line.change().action(),
							line.change().before(), line.change().after(), "other")));
		}
	}

	private void withoutGuard(String sql) throws SQLException {
		run(dropGuard(), sql);
	}

	private void run(String... statements) throws SQLException {
		try (Connection connection = this.dataSource.getConnection();
				Statement statement = connection.createStatement()) {
			for (String sql : statements) {
				for (String single : sql.split(";")) {
					statement.execute(single);
				}
			}
		}
	}

	private static String freshId() {
		return "'" + UUID.randomUUID() + "'";
	}

	String switchKeys(boolean on) {
		return "set referential_integrity " + on;
	}

	String inDialect(String sql) {
		return sql.replace(" cascade", "");
	}

	String createGuard() {
		return "create trigger record_line_stays before update, delete on record_line for each row call '"
				+ AppendOnlyTrigger.class.getName() + "'";
	}

	String dropGuard() {
		return "drop trigger if exists record_line_stays";
	}

}
