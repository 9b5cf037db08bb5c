package rimebook.points;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.stand.Stand;
import rimebook.tablets.JudgeTables;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Cards of points judging while the list of called elements changes under them. */
@WholeApplication
class PointsCardIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PointsSubmission submission;

	@Autowired
	private JudgeTables tables;

	@Autowired
	private Stand stand;

	private SmallCompetition day;

	private PerformanceView performance;

	private SeatView seat;

	private CalledElements called;

	@BeforeEach
	void threeElementsAreCalled() {
		this.day = PointsCompetition.running(this.context, 3, 3);
		this.day.open(1);
		this.performance = this.day.callNext(1);
		this.seat = this.day.seats().get(1);
		this.called = new CalledElements(this.context, this.performance);
		this.called.call("I4+pi3", "ME4", "TwE3");
	}

	@Test
	void anotherElementHasToBeConfirmed() {
		sendAll(1, 1);
		this.called.change(2, "AC2");
		assertThat(task(this.seat).called().elements()).extracting(PointsTasks.PointsTask.Element::confirm)
			.containsExactly(false, true, false);
		assertThat(missing()).contains("Judge 2: confirm element 2, now AC2");
		assertThat(task(this.seat).card().marks().grades()).as("the grade stays").hasSize(3);
		send(this.seat, 2, 2);
		assertThat(task(this.seat).called().elements()).noneMatch(PointsTasks.PointsTask.Element::confirm);
		assertThat(missing()).doesNotContain("Judge 2: confirm element 2, now AC2")
			.contains("Judge 1: confirm element 2, now AC2");
	}

	@Test
	void changedLevelPartDowngradeOrReviewAsksNoJudge() {
		sendAll(1, 1);
		this.called.change(1, "I4");
		this.called.change(2, "ME3<");
		this.called.change(3, "TwEB");
		this.called.review(2);
		assertThat(task(this.seat).called().elements()).extracting((element) -> element.coding().element())
			.containsExactly("I", "ME", "TwE");
		assertThat(task(this.seat).called().elements()).noneMatch(PointsTasks.PointsTask.Element::confirm);
		assertThat(missing()).noneMatch((line) -> line.startsWith("Judge"));
	}

	@Test
	void elementThatIsCalledAgainAsItWasNeedsNoConfirmation() {
		sendAll(1, 1);
		this.called.change(2, "AC2");
		this.called.change(2, "ME4");
		assertThat(missing()).noneMatch((line) -> line.contains("confirm"));
	}

	@Test
	void elementThatWasTakenOutIsConfirmedByACardWithoutIt() {
		sendAll(1, 1);
		this.called.takeOut(2);
		assertThat(task(this.seat).called().takenOut()).extracting((out) -> out.number() + " " + out.code())
			.containsExactly("2 ME4");
		assertThat(missing()).contains("Judge 2: confirm that element 2 (ME4) was taken out");
		send(this.seat, 2, 2);
		assertThat(task(this.seat).called().takenOut()).isEmpty();
		assertThat(missing()).noneMatch((line) -> line.startsWith("Judge 2"))
			.contains("Judge 1: confirm that element 2 (ME4) was taken out");
	}

	@Test
	void cardGivenToAnOlderListIsTakenAndWhatItLacksIsMissing() {
		PointsMarks typed = marks(this.seat, 1);
		this.called.insert("AC2");
		submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), this.performance.id(), 1, typed, 1), this.seat);
		assertThat(missing()).contains("Judge 2 (element 4)");
		assertRefused("grade-missing",
				() -> submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), this.performance.id(), 2, typed),
						this.seat));
	}

	@Test
	void gradeOfAnElementThatWasTakenOutIsKeptAndDoesNotCount() {
		PointsMarks typed = marks(this.seat, 1);
		this.called.takeOut(3);
		submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), this.performance.id(), 1, typed, 1), this.seat);
		assertThat(task(this.seat).card().marks().grades()).hasSize(3);
		assertThat(missing()).filteredOn((line) -> line.startsWith("Judge 2"))
			.containsExactly("Judge 2: confirm that element 3 (TwE3) was taken out");
	}

	@Test
	void listThatDoesNotExistIsNamed() {
		assertRefused("list-unknown", () -> submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(),
				this.performance.id(), 1, marks(this.seat, 1), 2), this.seat));
	}

	@Test
	void repetitionIsTheSameCardOnlyWithTheSameList() {
		PointsMarks typed = marks(this.seat, 1);
		PointsSubmission.SubmitPointsCard card = new PointsSubmission.SubmitPointsCard(UUID.randomUUID(),
				this.performance.id(), 1, typed, 1);
		CardBook.Acknowledgement first = submit(card, this.seat);
		this.called.change(2, "ME3");
		assertThat(submit(card, this.seat)).isEqualTo(first);
		assertRefused("card-content-differs",
				() -> submit(new PointsSubmission.SubmitPointsCard(card.id(), this.performance.id(), 1, typed, 2),
						this.seat));
	}

	@Test
	void refusalShowsTheVersionThatIsThereToItsOwnSeatOnly() {
		PointsSubmission.SubmitPointsCard card = new PointsSubmission.SubmitPointsCard(UUID.randomUUID(),
				this.performance.id(), 1, marks(this.seat, 1), 1);
		CardBook.Acknowledgement first = submit(card, this.seat);
		PointsSubmission.SubmitPointsCard other = new PointsSubmission.SubmitPointsCard(UUID.randomUUID(),
				this.performance.id(), 1, marks(this.seat, 3), 1);
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> submit(other, this.seat))
			.satisfies((refused) -> assertThat(refused.received()).isEqualTo(new PointsSubmission.ReceivedPointsCard(1,
					card.marks().grades(), components(new BigDecimal("7.25")), first.receivedAt())));
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> submit(card, this.day.seats().get(0)))
			.satisfies((refused) -> assertThat(refused.received()).isNull());
	}

	@Test
	void ownCardsOfTheSegmentAreLookedUp() {
		sendAll(1, 1);
		assertThat(this.tables.pointsCardsOf(this.seat.id())).singleElement().satisfies((own) -> {
			assertThat(own.startNumber()).isEqualTo(1);
			assertThat(own.closed()).isFalse();
			assertThat(own.elements())
				.extracting((graded) -> graded.number() + " " + graded.code() + " " + graded.grade())
				.containsExactly("1 I4+pi3 1", "2 ME4 1", "3 TwE3 1");
			assertThat(own.card().marks().component("Composition")).isEqualTo(725);
		});
	}

	@Test
	void placementSeatHasNoneToLookUp() {
		assertThat(this.tables.pointsCardsOf(SmallCompetition.running(this.context, 2, 3).seats().get(0).id()))
			.isEmpty();
	}

	private void sendAll(int sequence, int list) {
		this.day.seats().forEach((one) -> send(one, sequence, list));
	}

	private void send(SeatView one, int sequence, int list) {
		submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), this.performance.id(), sequence, marks(one, 1),
				list), one);
	}

	private CardBook.Acknowledgement submit(PointsSubmission.SubmitPointsCard card, SeatView one) {
		return this.submission.submit(card, one.id(), new Actor(one.label(), "judge", "test"));
	}

	private PointsTasks.PointsTask task(SeatView one) {
		return this.tables.tableOf(one.id()).marking().points();
	}

	private PointsMarks marks(SeatView one, int grade) {
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		task(one).called().elements().forEach((element) -> grades.put(element.id(), grade));
		return new PointsMarks(grades, components(725));
	}

	private static <T> Map<String, T> components(T mark) {
		Map<String, T> components = new LinkedHashMap<>();
		List.of("Composition", "Presentation", "Skating Skills").forEach((name) -> components.put(name, mark));
		return components;
	}

	private List<String> missing() {
		return this.stand.ofSegment(this.day.segment(1))
			.now()
			.cards()
			.missing()
			.stream()
			.map(Sentence::english)
			.toList();
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo(code));
	}

}
