package rimebook.audit;

import org.springframework.context.ApplicationContext;

import rimebook.competition.SegmentId;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarksAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.SmallCompetition;

/** A competition whose first segment was posted, corrected and signed by both. */
final class SignedDay {

	private SignedDay() {
	}

	static SmallCompetition of(ApplicationContext context) {
		SmallCompetition day = SmallCompetition.running(context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		ResultPublication publication = context.getBean(ResultPublication.class);
		publication.post(segment, version(context, segment), SmallCompetition.ACCOUNTANT);
		Corrections corrections = context.getBean(Corrections.class);
		PerformanceView first = day.performances(1).get(0);
		CorrectionView proposed = corrections.propose(new Corrections.ProposeCorrection(
				MarksAmendment.on(first.id(), day.seats().get(0).id(), new CardMarks(100, 100)), "Typed one key off."),
				SmallCompetition.ACCOUNTANT);
		corrections.approve(proposed.id(), proposed.version(), SmallCompetition.REFEREE);
		publication.sign(segment, version(context, segment), Signatories.Signatory.REFEREE, SmallCompetition.REFEREE);
		publication.sign(segment, version(context, segment), Signatories.Signatory.ACCOUNTANT,
				SmallCompetition.ACCOUNTANT);
		return day;
	}

	private static int version(ApplicationContext context, SegmentId segment) {
		return context.getBean(Standings.class).result(segment).orElseThrow().version();
	}

}
