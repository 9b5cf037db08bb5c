package rimebook.protests;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.audit.RecordVerification;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Agreement;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/**
 * Whatever people do to the teams of an event, in any order: an act is done or refused
 * with a sentence, and entries, performances and results agree afterwards.
 */
@WholeApplication
class RandomActsIntegrationTests {

	private static final int ACTS = 30;

	@Autowired
	private ApplicationContext context;

	private SmallCompetition day;

	private Random random;

	@ParameterizedTest
	@CsvSource({ "1,false", "2,false", "3,false", "4,true", "5,true" })
	void entriesPerformancesAndResultsAgreeAfterEveryAct(long seed, boolean byPoints) {
		this.random = new Random(seed);
		this.day = byPoints ? PointsCompetition.running(this.context, 3, 3)
				: SmallCompetition.running(this.context, 3, 3);
		List<String> done = new ArrayList<>();
		for (int i = 0; i < ACTS; i++) {
			Act act = Act.values()[this.random.nextInt(Act.values().length)];
			done.add(act + (succeeds(act) ? "" : " refused"));
			Agreement.check(this.context, this.day, "seed " + seed + ": " + String.join(", ", done));
		}
		assertStoredAsTold(done);
	}

	/** No road through the service leaves something that its own lines deny. */
	private void assertStoredAsTold(List<String> done) {
		List<String> ids = Stream
			.<Object>concat(Stream.<Object>of(this.day.event().id(), this.day.segment(1), this.day.segment(2)),
					Stream.concat(this.day.performances(1).stream(), this.day.performances(2).stream())
						.map(PerformanceView::id))
			.map(Object::toString)
			.toList();
		assertThat(this.context.getBean(RecordVerification.class).compareStored().faults()).as(done.toString())
			.noneMatch((fault) -> ids.stream().anyMatch(fault::contains));
	}

	private boolean succeeds(Act act) {
		try {
			act.on(this);
			return true;
		}
		catch (RimebookException refused) {
			return false;
		}
	}

	private enum Act {

		GO_ON, GO_ON_AGAIN, SKATE, END, WITHDRAW, COME_BACK, CORRECT, CORRECT_AGAIN, SIGN, REOPEN;

		private void on(RandomActsIntegrationTests test) {
			switch (this) {
				case GO_ON, GO_ON_AGAIN -> test.goOn();
				case SKATE -> test.skate();
				case END -> test.end();
				case WITHDRAW -> test.withdraw(test.pick(test.day.entries()));
				case COME_BACK -> test.comeBack(test.pick(test.day.entries()));
				case CORRECT, CORRECT_AGAIN -> test.correct();
				case SIGN -> test.sign();
				case REOPEN -> test.reopen();
			}
		}

	}

	private <T> T pick(List<T> all) {
		return all.get(this.random.nextInt(all.size()));
	}

	private int current() {
		return this.day.performances(2).isEmpty() ? 1 : 2;
	}

	/** Open the first segment, skate what waits, or open the second one. */
	private void goOn() {
		if (this.day.performances(1).isEmpty()) {
			this.day.open(1);
		}
		else if (this.day.performances(current()).stream().anyMatch((one) -> !one.status().isDone())) {
			skate();
		}
		else if (current() == 1) {
			this.day.open(2);
		}
	}

	private void skate() {
		if (waits()) {
			this.day.skateNext(current());
		}
	}

	private boolean waits() {
		return this.day.performances(current()).stream().anyMatch((one) -> one.status() == PerformanceStatus.WAITING);
	}

	private void end() {
		if (waits()) {
			PerformanceView called = this.day.callNext(current());
			this.context.getBean(SegmentRun.class)
				.end(called.id(), called.version(), pick(List.of(PerformanceStatus.WITHDRAWN,
						PerformanceStatus.NOT_FINISHED, PerformanceStatus.DISQUALIFIED)), "As it was.", REFEREE);
		}
	}

	private void withdraw(EntryView entry) {
		this.context.getBean(Entries.class).withdraw(entry.id(), entry.version(), "Ill.", SECRETARY);
	}

	private void comeBack(EntryView entry) {
		this.context.getBean(Entries.class).reinstate(entry.id(), entry.version(), "Slip.", SECRETARY);
	}

	private void correct() {
		List<PerformanceView> all = this.day.performances(1 + this.random.nextInt(2));
		if (!all.isEmpty()) {
			PerformanceView performance = pick(all);
			List<PerformanceStatus> offers = this.context.getBean(StatusCorrection.class).offers(performance.id());
			if (!offers.isEmpty()) {
				correct(performance, pick(offers));
			}
		}
	}

	private void correct(PerformanceView performance, PerformanceStatus next) {
		Corrections corrections = this.context.getBean(Corrections.class);
		CorrectionView proposed = corrections.propose(
				new Corrections.ProposeCorrection(StatusCorrection.StatusAmendment.on(performance.id(), next), "Slip."),
				ACCOUNTANT);
		corrections.effect(proposed.id());
		corrections.approve(proposed.id(), proposed.version(), REFEREE);
		if (next == PerformanceStatus.ON_ICE) {
			PerformanceView now = this.day.now(performance);
			this.context.getBean(SegmentRun.class)
				.end(now.id(), now.version(), PerformanceStatus.NOT_FINISHED, "As it was.", REFEREE);
		}
	}

	private void sign() {
		SegmentId segment = this.day.segment(1 + this.random.nextInt(2));
		ResultPublication publication = this.context.getBean(ResultPublication.class);
		publication.post(segment, version(segment), ACCOUNTANT);
		publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
	}

	private void reopen() {
		SegmentId segment = this.day.segment(1 + this.random.nextInt(2));
		this.context.getBean(ResultPublication.class).reopen(segment, version(segment), "Slip.", REFEREE);
	}

	private int version(SegmentId segment) {
		return this.context.getBean(Standings.class).result(segment).map((result) -> result.version()).orElse(0);
	}

}
