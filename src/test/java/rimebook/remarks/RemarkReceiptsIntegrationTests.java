package rimebook.remarks;

import java.util.List;
import java.util.Set;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatTakeovers;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.stand.Stand;
import rimebook.tablets.JudgeTables;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** What the referee hears back from the seats: who saw a remark, how many cards wait. */
@WholeApplication
class RemarkReceiptsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	@Autowired
	private SegmentRun run;

	@Autowired
	private RemarkReceipts remarks;

	@Autowired
	private JudgeTables tables;

	@Autowired
	private Stand stand;

	@Autowired
	private Panels panels;

	@Autowired
	private SeatCodes codes;

	private SmallCompetition day;

	private PerformanceView performance;

	@BeforeEach
	void aRemarkIsMade() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.day.open(1);
		this.performance = this.day.callNext(1);
		this.context.getBean(Remarks.class)
			.note(this.performance.id(), Remarks.RemarkKind.FALL, "one skater", SmallCompetition.REFEREE);
	}

	@Test
	void eachSeatSeesForItself() {
		assertThat(told()).containsExactly("one skater Judge 1, Judge 2, Judge 3");
		see(remark(), seat(1));
		assertThat(notices(1)).containsExactly("one skater true");
		assertThat(notices(2)).containsExactly("one skater false");
		assertThat(told()).containsExactly("one skater Judge 1, Judge 3");
	}

	@Test
	void seenAgainIsTheFirstAnswerAndOneRowOnTheRecord() {
		RemarkReceipts.Receipt first = see(remark(), seat(0));
		assertThat(see(remark(), seat(0))).isEqualTo(first);
		assertThat(lines()).containsExactly("Judge 1: fall: one skater");
	}

	@Test
	void manyTimesAtOnceIsOneRow() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			aRemarkIsMade();
			UUID id = remark();
			assertThat(Set.copyOf(Races.all(8, () -> see(id, seat(0))))).hasSize(1);
			assertThat(lines()).hasSize(1);
		}
	}

	@Test
	void whatWasSeenWithoutContactIsTakenAfterClosing() {
		UUID id = remark();
		this.day.sendAll(this.performance);
		this.day.close(this.performance);
		assertThat(see(id, seat(2)).id()).isEqualTo(id);
	}

	@Test
	void anotherPanelsRemarkIsNotThere() {
		SeatView stranger = SmallCompetition.running(this.context, 2, 3).seats().get(0);
		UUID id = remark();
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> see(id, stranger))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("remark-not-of-seat"));
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> see(UUID.randomUUID(), seat(0)));
	}

	@Test
	void whatWasSeenIsNeverUndone() {
		see(remark(), seat(0));
		for (String change : List.of("update remark_seen set seen_at = seen_at", "delete from remark_seen")) {
			assertThatExceptionOfType(DataAccessException.class).isThrownBy(() -> this.database.sql(change).update());
		}
	}

	@Test
	void cardsThatWaitAreToldUntilAnotherTabletJoins() {
		this.panels.issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		String slip = seat(0).code();
		this.codes.pair(slip, "a tablet", null);
		this.panels.noteTablet(seat(0).id(), 2, false);
		assertThat(this.stand.ofSegment(this.day.segment(1)).now().cards().seats())
			.extracting((card) -> card.tablet().waiting())
			.containsExactly(2, 0, 0);
		this.codes.pair(slip, "another tablet", null);
		assertThat(seat(0).tablet().waiting()).as("the first tablet has the seat until the referee says yes")
			.isEqualTo(2);
		SeatTakeovers takeovers = this.context.getBean(SeatTakeovers.class);
		takeovers.open()
			.stream()
			.filter((one) -> one.seat().equals(seat(0).id().value()))
			.forEach((one) -> takeovers.answer(one.seat(), one.askedAt(), true, SmallCompetition.REFEREE));
		assertThat(seat(0).tablet().waiting()).isZero();
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.panels.noteTablet(seat(0).id(), -1, false))
			.withMessageContaining("'waiting'");
	}

	private RemarkReceipts.Receipt see(UUID remark, SeatView seat) {
		return this.remarks.see(remark, seat.id(), new Actor(seat.label(), "judge", "test"));
	}

	private UUID remark() {
		return this.context.getBean(Remarks.class).ofPerformance(this.performance.id()).get(0).id();
	}

	private SeatView seat(int index) {
		return this.day.seats().get(index);
	}

	private List<String> notices(int seat) {
		return this.tables.tableOf(seat(seat).id())
			.course()
			.now()
			.remarks()
			.stream()
			.map((notice) -> notice.remark().text() + " " + notice.seen())
			.toList();
	}

	private List<String> told() {
		return this.stand.ofSegment(this.day.segment(1))
			.now()
			.remarks()
			.stream()
			.map((told) -> told.remark().text() + " " + String.join(", ", told.notYet()))
			.toList();
	}

	private List<String> lines() {
		return this.database
			.sql("select after_text from record_line where subject_id = :id and action = 'remark.seen' order by number")
			.param("id", this.performance.id().toString())
			.query(String.class)
			.list();
	}

}
