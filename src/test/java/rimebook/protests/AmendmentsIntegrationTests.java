package rimebook.protests;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

import rimebook.performances.Amendment;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.StatusCorrection;
import rimebook.placement.MarksAmendment;
import rimebook.points.LineAmendment;
import rimebook.points.SheetAmendment;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.points.JudgedElement;
import rimebook.testsupport.EarlierCorrections;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** What is kept of a correction says the same for as long as it is kept. */
@WholeApplication
class AmendmentsIntegrationTests {

	private static final List<Amendments.Pair> MEANT = List.of(
			pair(new MarksAmendment(new CardMarks(560, 570)), new MarksAmendment(new CardMarks(0, 600))),
			pair(new LineAmendment(12, "", -1), new LineAmendment(12, "", 3)),
			pair(new LineAmendment(0, "Skating \"Skills", 725), new LineAmendment(0, "Skating \"Skills", 750)),
			pair(new SheetAmendment.ElementAmendment(3, false, "ME4", JudgedElement.ElementWorth.COUNTS),
					new SheetAmendment.ElementAmendment(3, false, "M\\E", JudgedElement.ElementWorth.NO_VALUE)),
			pair(SheetAmendment.ElementAmendment.nothing(10, true),
					new SheetAmendment.ElementAmendment(10, true, "I4+pi3", JudgedElement.ElementWorth.COUNTS)),
			pair(new SheetAmendment.DeductionAmendment(1, false, "fall", 2),
					SheetAmendment.DeductionAmendment.nothing(1, false)),
			pair(SheetAmendment.DeductionAmendment.nothing(1, true),
					new SheetAmendment.DeductionAmendment(1, true, "time", 15)),
			pair(new StatusCorrection.StatusAmendment(PerformanceStatus.CLOSED),
					new StatusCorrection.StatusAmendment(PerformanceStatus.DISQUALIFIED)));

	@Autowired
	private Amendments amendments;

	@Test
	void eachKindIsReadAsItWasMeantAndWrittenSoAgain() {
		List<EarlierCorrections> kept = EarlierCorrections.all();
		assertThat(kept).hasSameSizeAs(MEANT);
		for (int i = 0; i < kept.size(); i++) {
			assertThat(this.amendments.read(kept.get(i).amendment())).isEqualTo(MEANT.get(i));
			assertThat(this.amendments.read(this.amendments.write(MEANT.get(i)))).isEqualTo(MEANT.get(i));
		}
	}

	@Test
	void eachPlaceAndWhatStandsThereIsSaidInWords() {
		assertThat(MEANT)
			.extracting((pair) -> pair.after().place() + ": " + pair.before().words() + " > " + pair.after().words())
			.containsExactly(": 5.6 / 5.7 > 0.0 / 6.0", "element 12: -1 > +3", "Skating \"Skills: 7.25 > 7.50",
					"element 3: ME4 > M\\E (no value)", "further element as 10: nothing > I4+pi3",
					"deduction 1: fall 2 > nothing", "further deduction: nothing > time 15",
					"how the team came through: marks count > disqualified");
	}

	private static Amendments.Pair pair(Amendment before, Amendment after) {
		return new Amendments.Pair(before, after);
	}

}
