package rimebook.tablets;

import org.assertj.core.api.Assertions;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.panels.SeatView;
import rimebook.performances.Amending;
import rimebook.performances.Amendment;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarkWords;
import rimebook.placement.MarksAmendment;
import rimebook.points.LineAmendment;
import rimebook.points.PointsWords;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

/** What a judge is told of own cards that officials corrected. */
@WholeApplication
class OwnCorrectionsIntegrationTests {

	private static final Amending.Approval APPROVED = new Amending.Approval("misread", Sentence.said("by two"),
			SmallCompetition.REFEREE);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JudgeTables tables;

	@Test
	void eachCorrectionOfAPairStandsWithWhatWasBeforeAndOnlyForItsJudge() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		CardMarks given = day.skateNext(1).get(1);
		SeatView seat = day.seats().get(1);
		PerformanceView closed = day.performances(1).get(0);
		CardMarks second = new CardMarks(given.first() + 10, given.second());
		CardMarks third = new CardMarks(given.first(), given.second() + 10);
		correct(closed, seat, given, second);
		correct(closed, seat, second, third);
		assertThat(this.tables.tableOf(seat.id()).decided().corrected())
			.extracting("startNumber", "segment", "before", "after")
			.containsExactly(tuple(1, MarkWords.of(given), MarkWords.of(second)),
					tuple(1, MarkWords.of(second), MarkWords.of(third)));
		assertThat(this.tables.tableOf(day.seats().get(0).id()).decided().corrected()).isEmpty();
	}

	@Test
	void aCorrectedGradeStandsWithItsElement() {
		SmallCompetition day = PointsCompetition.running(this.context, 2, 3);
		day.open(1);
		day.skateNext(1);
		SeatView seat = day.seats().get(2);
		PerformanceView closed = day.performances(1).get(0);
		Amendments amendments = this.context.getBean(Amendments.class);
		Amendment.SupposedChange<LineAmendment> change = new Amendment.SupposedChange<>(closed.id(), seat.id(),
				new LineAmendment(2, "", 5));
		int given = amendments.check(change).value();
		amendments.apply(change, new LineAmendment(2, "", given), APPROVED);
		assertThat(this.tables.tableOf(seat.id()).decided().corrected())
			.extracting("startNumber", "segment", "before", "after")
			.containsExactly(tuple(1, "2 ME4 " + PointsWords.grade(given), "2 ME4 " + "+5"));
	}

	private void correct(PerformanceView closed, SeatView seat, CardMarks from, CardMarks to) {
		this.context.getBean(Amendments.class)
			.apply(MarksAmendment.on(closed.id(), seat.id(), to), new MarksAmendment(from), APPROVED);
	}

	private static Tuple tuple(int number, String before, String after) {
		return Assertions.tuple(number, "Short programme", before, after);
	}

}
