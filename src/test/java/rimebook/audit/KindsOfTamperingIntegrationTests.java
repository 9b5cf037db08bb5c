package rimebook.audit;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import javax.sql.DataSource;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What somebody who may do everything with the database can do to the record and to what
 * it tells of, and what finds it: the chain alone, what is stored beside it, anchors that
 * were kept outside, the times of the lines, or nothing, and then why. Has a database of
 * its own, whose guards it takes away.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:kinds;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=20000")
class KindsOfTamperingIntegrationTests {

	/** A line in the middle. */
	private static final int MIDDLE = 20;

	private static final Duration HOURS = Duration.ofHours(3);

	/** A row put in beside a performance, under an identity of its own. */
	private static final String PUT = """
			insert into %1$s (id, %2$s) select cast('00000000-0000-0000-0000-00000000000f' as uuid), %3$s
			from performance p where p.id = %4$s""";

	/** Whatever refers to another table before it. */
	private static final List<String> EVERYTHING = List.of("timetable_version", "timetable_plan", "past_cancellation",
			"result_signature", "result_posting", "result_version", "segment_result", "correction", "protest", "ruling",
			"ruling_release", "ruling_question", "remark_seen", "remark", "deductions_seen", "list_authorisation",
			"card_keying", "clock_tap", "panel_change", "card_submission", "points_card", "called_list",
			"deduction_list", "performance", "start_position", "starting_order", "planned_programme",
			"announced_programme", "seat_code", "seat", "official_interest", "official", "entry", "team", "club",
			"segment", "event", "commentary_link", "competition", "former_password", "person_role", "person",
			"record_line");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private DataSource dataSource;

	private List<Anchor> anchors = List.of();

	private StoredCheck.Finding before = new StoredCheck.Finding(0, 0, 0, 0, List.of());

	private String result = "";

	private String cards = "";

	private String sheet = "";

	private String other = "";

	@BeforeAll
	void playAndTakeTheGuardsAway() throws SQLException {
		SmallCompetition points = PointsCompetition.running(this.context, 1, 3);
		points.open(1);
		points.skateRest(1);
		SmallCompetition day = SignedDay.of(this.context);
		this.context.getBean(Timetables.class).fill(day.competition().id(), 0, SmallCompetition.REFEREE);
		this.context.getBean(TimetableVersions.class).publish(day.competition().id(), 1, "", SmallCompetition.REFEREE);
		Crew.add(this.context, Role.REFEREE);
		this.result = "'" + day.segment(1) + "'";
		this.cards = "'" + day.performances(1).get(1).id() + "'";
		this.other = "'" + points.segment(1) + "'";
		this.sheet = "'" + points.performances(1).get(0).id() + "'";
		try (Connection connection = this.dataSource.getConnection();
				Statement statement = connection.createStatement()) {
			for (String table : List.of("record_line", "result_version", "card_submission", "points_card",
					"called_list", "deduction_list", "starting_order", "start_position", "result_posting",
					"result_signature", "list_authorisation", "clock_tap", "panel_change", "card_keying",
					"deductions_seen", "remark_seen", "ruling", "ruling_release", "ruling_question",
					"past_cancellation", "timetable_version", "timetable_plan")) {
				statement.execute(dropGuard(table));
			}
			this.anchors = new TamperedRecord(connection, List.of()).lines()
				.stream()
				.filter((line) -> line.change().action().equals("result.published"))
				.map((line) -> Anchor.of(line.number(), line.link().digest(), line.writtenAt()))
				.toList();
			this.before = StoredCheck.check(connection);
		}
	}

	@Test
	void nothingIsFoundWhereNothingWasDone() throws SQLException {
		assertThat(foundBy((record) -> {
		})).isEqualTo(Finder.NOTHING);
	}

	@ParameterizedTest(name = "{0}: {1}")
	@MethodSource("kinds")
	void eachKindIsFoundAsItIsSaidToBe(String kind, Finder finder, Act act) throws SQLException {
		assertThat(foundBy(act)).as(kind).isEqualTo(finder);
	}

	@Test
	void theseAreMoreThanFifty() {
		assertThat(kinds().map((kind) -> kind[0]).distinct()).hasSizeGreaterThanOrEqualTo(50);
	}

	private Stream<Object[]> kinds() {
		return Stream.of(changed(), deletedAndInserted(), heads(), writtenAnew(), stored(), clocks(), notFound())
			.flatMap(List::stream);
	}

	/** A field of a line, and nothing else. */
	private static List<Object[]> changed() {
		List<Object[]> kinds = new ArrayList<>();
		for (String field : List.of("actor", "actor_id", "role", "device", "subject", "subject_id", "action",
				"before_text", "after_text", "reason", "evidence")) {
			kinds.add(kind("a line's " + field, Finder.CHAIN,
					"update record_line set " + field + " = 'other' where number = " + MIDDLE));
		}
		kinds.add(kind("a line's time", Finder.CHAIN,
				"update record_line set written_at = written_at + interval '1' second where number = " + MIDDLE));
		kinds.add(kind("a line's form", Finder.CHAIN,
				"update record_line set form = 1, actor_id = '', evidence = '' where number = " + MIDDLE));
		kinds.add(kind("a line's digest", Finder.CHAIN,
				"update record_line set digest = previous_digest where number = " + MIDDLE));
		kinds.add(kind("the digest of the line before", Finder.CHAIN,
				"update record_line set previous_digest = digest where number = " + MIDDLE));
		return kinds;
	}

	private static List<Object[]> deletedAndInserted() {
		return List.of(kind("the first line deleted", Finder.CHAIN, "delete from record_line where number = 1"),
				kind("a line deleted", Finder.CHAIN, "delete from record_line where number = " + MIDDLE),
				kind("the last line deleted", Finder.CHAIN,
						"delete from record_line where number = (select number from record_head)"),
				kind("all lines deleted", Finder.CHAIN, "delete from record_line"),
				kind("a line deleted and the rest numbered anew", Finder.CHAIN, (record) -> {
					record.lines((lines) -> {
						lines.remove(MIDDLE);
						return numberedOnly(lines);
					});
					record.headAtTheEnd();
				}), kind("a line inserted and the rest numbered anew", Finder.CHAIN, (record) -> {
					record.lines((lines) -> {
						lines.add(MIDDLE, lines.get(MIDDLE));
						return numberedOnly(lines);
					});
					record.headAtTheEnd();
				}), kind("a line appended without the head", Finder.CHAIN, (record) -> record.lines((lines) -> {
					RecordLine last = lines.get(lines.size() - 1);
					lines.add(TamperedRecord.numbered(last, last.number() + 1, last.link().digest()).sealed());
					return lines;
				})), kind("a line before the first", Finder.CHAIN, (record) -> record.lines((lines) -> {
					lines.add(TamperedRecord.numbered(lines.get(0), 0, ChainDigest.START).sealed());
					return lines;
				})),
				kind("two lines in each other's place", Finder.CHAIN,
						(record) -> record
							.lines((lines) -> numberedOnly(TamperedRecord.exchanged(lines, MIDDLE, MIDDLE + 1)))),
				kind("two lines in each other's place, their own digests anew", Finder.CHAIN,
						(record) -> record.lines((lines) -> {
							List<RecordLine> linked = TamperedRecord
								.linked(TamperedRecord.exchanged(new ArrayList<>(lines), MIDDLE, MIDDLE + 1));
							lines.set(MIDDLE, linked.get(MIDDLE));
							lines.set(MIDDLE + 1, linked.get(MIDDLE + 1));
							return lines;
						})),
				kind("a line with a digest that fits it", Finder.CHAIN, (record) -> record.lines((lines) -> {
					lines.set(MIDDLE, TamperedRecord.by(lines.get(MIDDLE), "Somebody").sealed());
					return lines;
				})));
	}

	private static List<RecordLine> numberedOnly(List<RecordLine> lines) {
		List<RecordLine> numbered = new ArrayList<>();
		for (RecordLine line : lines) {
			numbered.add(TamperedRecord.numbered(line, numbered.size() + 1, line.link().previousDigest()));
		}
		return numbered;
	}

	private static List<Object[]> heads() {
		return List.of(kind("the head's digest", Finder.CHAIN, "update record_head set digest = 'x'"),
				kind("the head's number, less", Finder.CHAIN, "update record_head set number = number - 1"),
				kind("the head's number, more", Finder.CHAIN, "update record_head set number = number + 1"),
				kind("the head deleted", Finder.CHAIN, "delete from record_head"));
	}

	/** The chain made whole again. */
	private static List<Object[]> writtenAnew() {
		return List.of(kind("the end cut off, a published version with it", Finder.STORED, (record) -> {
			record.sql("delete from record_line where number > " + MIDDLE);
			record.headAtTheEnd();
		}), kind("the end cut off, and what it tells of", Finder.ANCHORS, (record) -> {
			List<RecordLine> lines = record.lines();
			RecordLine last = lines.get(lines.size() - 1);
			record.keepOnly(List.of(record.seen(last.writtenAt())));
			String person = "'" + last.thing().subjectId() + "'";
			record.sql("delete from person_role where person_id = " + person, "delete from person where id = " + person,
					"delete from record_line where subject = 'person' and subject_id = " + person);
			record.headAtTheEnd();
		}), kind("everything deleted, as if nothing had happened", Finder.ANCHORS, (record) -> {
			record.empty(EVERYTHING);
			record.headAtTheEnd();
		}), anew("one line changed", (lines) -> {
			lines.set(0, TamperedRecord.by(lines.get(0), "Somebody"));
			return lines;
		}), anew("why something was done", (lines) -> {
			RecordLine line = lines.get(1);
			lines.set(1, new RecordLine(line.link(), line.writtenAt(), line.who(), line.thing(),
					new RecordLine.Change(line.change().action(), line.change().before(), line.change().after(), "x")));
			return lines;
		}), anew("one line left out", (lines) -> {
			lines.remove(0);
			return lines;
		}), anew("one line put in", (lines) -> {
			lines.add(1, lines.get(0));
			return lines;
		}), anew("two lines in another order", (lines) -> TamperedRecord.exchanged(lines, 0, 1)),
				anew("another name in every line", (lines) -> {
					lines.replaceAll((line) -> line.change().action().equals("result.signed") ? line
							: TamperedRecord.by(line, "Somebody"));
					return lines;
				}), anew("every time a second later", (lines) -> {
					lines.replaceAll((line) -> TamperedRecord.later(line, Duration.ofSeconds(1)));
					return lines;
				}), anew("lines about no cards in the form without identities", (lines) -> {
					lines.set(0, TamperedRecord.ofFirstForm(lines.get(0)));
					return lines;
				}));
	}

	private List<Object[]> stored() {
		String version = " where scope_id = " + this.result + " and number = 1";
		String signed = " where segment_id = " + this.result;
		return List.of(
				kind("a version's body", Finder.STORED, "update result_version set body = concat(body, ' ')" + version),
				kind("a version's body and fingerprint", Finder.STORED,
						"update result_version set body = (select max(body) from result_version), fingerprint = "
								+ "(select max(fingerprint) from result_version where body = "
								+ "(select max(body) from result_version))" + version),
				kind("a version's note", Finder.STORED, "update result_version set note = 'other'" + version),
				kind("a version's note in other languages", Finder.STORED,
						"update result_version set said = '{\"key\":\"note.takes-place\"}'" + version),
				kind("a version's state", Finder.STORED, "update result_version set state = 'OFFICIAL'" + version),
				kind("a version's time", Finder.STORED,
						"update result_version set published_at = published_at - interval '3' hour" + version),
				kind("a version's number", Finder.STORED, "update result_version set number = 999" + version),
				kind("a version deleted", Finder.STORED, "delete from result_version" + version),
				kind("a mark", Finder.STORED,
						"update card_submission set first_mark = 600 - first_mark where performance_id = "
								+ this.cards),
				kind("when a card came", Finder.STORED,
						"update card_submission set received_at = received_at - interval '1' minute "
								+ "where performance_id = " + this.cards),
				kind("a card deleted", Finder.STORED,
						"delete from card_submission where performance_id = " + this.cards),
				kind("grades and components", Finder.STORED,
						"update points_card set marks = '{}' where performance_id = " + this.sheet),
				kind("called elements", Finder.STORED,
						"update called_list set called_by = 'Somebody' where performance_id = " + this.sheet),
				kind("who decided a correction", Finder.STORED,
						"update correction set decided_by = 'Somebody'" + signed),
				kind("what a correction says", Finder.STORED,
						"update correction set amendment = replace(amendment, '100', '110')" + signed),
				kind("a correction deleted", Finder.STORED, "delete from correction" + signed),
				kind("who signed, by name", Finder.STORED,
						"update segment_result set referee_signature = 'Somebody'" + signed),
				kind("who signed, by identity", Finder.STORED,
						"update segment_result set accountant_signature_id = 'person:other'" + signed),
				kind("when it was signed", Finder.STORED,
						"update segment_result set referee_signed_at = referee_signed_at - interval '3' hour" + signed),
				kind("a signature taken away", Finder.STORED,
						"update segment_result set accountant_signature = ''" + signed),
				kind("the state of an entry", Finder.STORED, "update entry set state = 'WITHDRAWN'"),
				kind("when an entry came", Finder.STORED,
						"update entry set entered_at = entered_at - interval '1' day"),
				kind("why an entry was late", Finder.STORED, "update entry set late_reason = 'other'"),
				kind("an official's qualification", Finder.STORED, "update official set qualification = 'other'"),
				kind("who sits on a seat", Finder.STORED,
						"update seat set official_id = (select id from official order by name fetch first 1 row only)"),
				kind("the name of an event", Finder.STORED, "update event set name = 'Elsewhere'"),
				kind("the rules of an event", Finder.STORED, "update event set policies = '{}'"),
				kind("the factor of a segment", Finder.STORED, "update segment set factor = factor + 1"),
				kind("the state of a competition", Finder.STORED, "update competition set state = 'FINAL'"),
				kind("the ticket of a start", Finder.STORED, "update start_position set ticket = 'x'"),
				kind("the seed of a draw", Finder.STORED, "update starting_order set seed = 'x'"),
				kind("the town of a club", Finder.STORED, "update club set town = 'Elsewhere'"),
				kind("how a team is spoken", Finder.STORED, "update team set spoken_as = 'other'"),
				kind("a team put into an event", Finder.STORED, PUT
					.formatted("entry", "version, event_id, team_id, state, late_reason, entered_at, withdrawn_reason",
							"0, s.event_id, (select e.team_id from entry e where e.team_id not in (select o.team_id "
									+ "from entry o where o.event_id = s.event_id) fetch first 1 row only), "
									+ "'ENTERED', '', current_timestamp, ''",
							this.cards)
					.replace("from performance p where p.id = " + this.cards,
							"from segment s where s.id = " + this.other)),
				kind("when a published timetable says that something happens", Finder.STORED,
						"update timetable_version set body = replace(body, 'T0', 'T1')"),
				kind("a plan of the days taken out", Finder.STORED, "delete from timetable_plan"),
				kind("a segment cancelled", Finder.STORED, "update segment set cancelled = 'other'"),
				kind("a segment cancelled, and when", Finder.STORED,
						"update segment set cancelled = 'other', cancelled_at = current_timestamp"),
				kind("a segment that had been cancelled for a while", Finder.STORED,
						PUT.formatted("past_cancellation", "subject_id, cancelled_at, brought_back_at",
								"p.segment_id, p.called_at, p.closed_at", this.cards)),
				kind("when a team was called", Finder.STORED,
						"update performance set called_at = called_at - interval '1' minute where id = " + this.cards),
				kind("how a performance ended", Finder.STORED,
						"update performance set status = 'WITHDRAWN' where id = " + this.cards),
				kind("elements planned after the fact", Finder.STORED,
						PUT.formatted("planned_programme", "version, entry_id, segment_id, codes",
								"0, p.entry_id, p.segment_id, 'I4'", this.cards)),
				kind("music told after the fact", Finder.STORED,
						PUT.formatted("announced_programme", "version, entry_id, segment_id, music",
								"0, p.entry_id, p.segment_id, 'Other'", this.cards)),
				kind("a touch of the clock put in", Finder.STORED,
						PUT.formatted("clock_tap", "performance_id, sequence, act, words, noted_by, noted_at",
								"p.id, 99, 'START', '', 'Somebody', p.called_at", this.cards)),
				kind("a remark put in", Finder.STORED,
						PUT.formatted("remark", "performance_id, kind, text, noted_by, noted_at",
								"p.id, 'FALL', '', 'Somebody', p.called_at", this.cards)),
				kind("a judge left out", Finder.STORED, PUT.formatted("panel_change",
						"segment_id, sequence, kind, seat_id, rule, reason, made_by, made_at",
						"p.segment_id, 99, 'LEFT_OUT', (select seat_id from card_submission c "
								+ "where c.performance_id = p.id fetch first 1 row only), 'x', 'x', 'Somebody', p.called_at",
						this.cards)),
				kind("a keyed card put in", Finder.STORED, PUT.formatted("card_keying",
						"performance_id, seat_id, number, keyed_by, keyed_by_id, marks, outcome, card_sequence, keyed_at",
						"p.id, (select seat_id from card_submission c where c.performance_id = p.id fetch first 1 row only), "
								+ "99, 'Somebody', '', '', 'x', 1, p.called_at",
						this.cards)),
				kind("who authorised the elements", Finder.STORED,
						"update list_authorisation set controller = 'Somebody' where performance_id = " + this.sheet),
				kind("who signed a version, beside it", Finder.STORED,
						"update result_signature set name = 'Somebody' where segment_id = " + this.result),
				kind("an official result as if it were not", Finder.STORED,
						"update segment_result set state = 'RUNNING', referee_signature = '', accountant_signature = ''"
								+ signed),
				kind("until when protests were heard", Finder.STORED,
						"update result_posting set conduct_until = conduct_until + interval '1' hour"),
				kind("the name of an account", Finder.STORED, "update person set display_name = 'other'"),
				kind("the role of an account", Finder.STORED, "update person_role set role = 'ADMINISTRATOR'"),
				kind("the line of a version and the whole chain after it", Finder.STORED,
						(record) -> record.wholeChain((lines) -> {
							lines.replaceAll((line) -> line.change().action().equals("result.published")
									? TamperedRecord.saying(line, line.change().after() + "0") : line);
							return lines;
						})));
	}

	private static List<Object[]> clocks() {
		return List.of(kind("the clock put back", Finder.CLOCK, (record) -> {
			RecordLine last = record.lines().get(record.lines().size() - 1);
			record.append(last.writtenAt().minus(HOURS));
		}), kind("the clock put ahead, and right again", Finder.CLOCK, (record) -> {
			RecordLine last = record.lines().get(record.lines().size() - 1);
			record.append(last.writtenAt().plus(HOURS));
			record.append(last.writtenAt());
		}), kind("the clock put ahead for the rest of the day", Finder.ANCHORS, (record) -> {
			RecordLine last = record.lines().get(record.lines().size() - 1);
			record.append(last.writtenAt().plus(HOURS));
			record.keepOnly(List.of(record.seen(last.writtenAt().plusSeconds(1))));
		}));
	}

	/** Each with why. */
	private static List<Object[]> notFound() {
		return List.of(
				// Nobody outside had seen what was written anew.
				kind("lines after the newest anchor written anew", Finder.NOTHING, (record) -> {
					Instant last = record.lines().get(record.lines().size() - 1).writtenAt();
					record.append(last);
					record.wholeChain((lines) -> {
						lines.set(lines.size() - 1, TamperedRecord.by(lines.get(lines.size() - 1), "Somebody"));
						return lines;
					});
				}),
				// Without anchors one chain is as good as another.
				kind("the whole record written anew where nobody kept an anchor", Finder.NOTHING, (record) -> {
					record.wholeChain((lines) -> {
						lines.set(0, TamperedRecord.by(lines.get(0), "Somebody"));
						return lines;
					});
					record.keepOnly(List.of());
				}),
				// Only who looked at another clock when the lines were written can tell.
				kind("a clock that was behind all day", Finder.NOTHING, (record) -> {
					Instant last = record.lines().get(record.lines().size() - 1).writtenAt();
					record.append(last);
					record.keepOnly(List.of(record.seen(last.plus(HOURS))));
				}),
				// A restored database has all accounts shut until they are opened again.
				kind("who may come in", Finder.NOTHING, "update person set active = not active"),
				// Nothing of a password is told anywhere, so nothing can be compared.
				kind("somebody's password", Finder.NOTHING, "update person set password_hash = 'other'"),
				// Nothing is changed by reading.
				kind("the database copied and read", Finder.NOTHING,
						(record) -> assertThat(record.lines()).isNotEmpty()));
	}

	private static Object[] kind(String kind, Finder finder, String sql) {
		return kind(kind, finder, (record) -> record.sql(sql));
	}

	private static Object[] kind(String kind, Finder finder, Act act) {
		return new Object[] { kind, finder, act };
	}

	private static Object[] anew(String kind, UnaryOperator<List<RecordLine>> change) {
		return kind("the chain written anew with " + kind, Finder.ANCHORS, (record) -> record.wholeChain(change));
	}

	private Finder foundBy(Act act) throws SQLException {
		try (Connection connection = this.dataSource.getConnection()) {
			connection.setAutoCommit(false);
			try {
				TamperedRecord record = new TamperedRecord(connection, this.anchors);
				act.on(record);
				return foundBy(record);
			}
			catch (IOException ex) {
				throw new IllegalStateException("No key was given", ex);
			}
			finally {
				connection.rollback();
				connection.setAutoCommit(true);
			}
		}
	}

	/** What finds it first. */
	private Finder foundBy(TamperedRecord record) throws SQLException, IOException {
		RecordFinding chain = ChainCheck.check(record.connection());
		if (!chain.isWhole()) {
			return Finder.CHAIN;
		}
		List<String> faults = new ArrayList<>(StoredCheck.check(record.connection()).faults());
		faults.removeAll(this.before.faults());
		if (!faults.isEmpty()) {
			return Finder.STORED;
		}
		AnchorCheck.Finding kept = AnchorCheck.check(record.connection(), record.anchors(), chain, "");
		if (!kept.faults().isEmpty() || !kept.notes().isEmpty()) {
			return Finder.ANCHORS;
		}
		return ClockCheck.check(record.connection()).isEmpty() ? Finder.NOTHING : Finder.CLOCK;
	}

	String dropGuard(String table) {
		return "drop trigger " + table + "_stays";
	}

	/** What finds a kind of tampering. */
	enum Finder {

		/** The chain alone, without anything from outside. */
		CHAIN,
		/** What is stored beside the lines, compared with them. */
		STORED,
		/** Only what was kept outside the database. */
		ANCHORS,
		/** The times of the lines. */
		CLOCK,
		/** Nothing. */
		NOTHING

	}

	/** What is done to it. */
	interface Act {

		void on(TamperedRecord record) throws SQLException;

	}

}
