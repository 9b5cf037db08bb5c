package rimebook.results;

import java.util.Objects;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.published.Standing;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Agreement;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/**
 * A team that leaves, at any moment of an event and in both ways of judging: it has no
 * final place, is listed after the placed ones, and nobody's place in an earlier segment
 * moves up. Sources: final tables of the 1997 and 2000 World Championships (men, pairs)
 * and of the 1999 US Championships (ladies), each with a team or skater that withdrew
 * between two segments.
 */
@WholeApplication
class LeavingTeamsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Standings standings;

	@Autowired
	private Entries entries;

	@Autowired
	private SegmentRun run;

	@Autowired
	private ResultPublication publication;

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whoWithdrawsBetweenTwoSegmentsHasNoPlaceInTheSignedEvent(boolean byPoints) {
		SmallCompetition day = running(byPoints);
		day.open(1);
		day.skateRest(1);
		sign(day.segment(1));
		String leader = row(day, 0).entry();
		withdraw(day, leader);
		assertOut(day, leader, "WITHDRAWN");
		Agreement.check(this.context, day, "withdrawn between the segments");
		assertThat(event(day).rows()).as("nobody moves up in the segment skated")
			.extracting((row) -> row.segmentPlaces().get(0))
			.containsExactly(2, 3, 4, 1);
		day.draw(2);
		assertThat(this.context.getBean(StartingOrderDraw.class).ofSegment(day.segment(2)).orElseThrow().starts())
			.hasSize(3);
		this.run.open(day.segment(2), REFEREE);
		day.skateNext(2);
		assertOut(day, leader, "WITHDRAWN");
		day.skateRest(2);
		sign(day.segment(2));
		ResultVersion signed = this.standings.latest(day.event().id()).orElseThrow();
		assertThat(signed.state()).isEqualTo(ResultVersion.ResultState.OFFICIAL);
		assertThat(signed.standing().rows()).extracting(Standing.Row::place).containsExactly(1, 2, 3, null);
		assertThat(signed.standing().skated()).isEqualTo(3);
		assertThat(signed.standing().starters()).isEqualTo(3);
		assertOut(day, leader, "WITHDRAWN");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whoWithdrawsBeforeTheFirstDrawIsInNoResult(boolean byPoints) {
		SmallCompetition day = running(byPoints);
		String team = day.entries().get(0).id().toString();
		withdraw(day, team);
		day.open(1);
		day.skateRest(1);
		assertThat(event(day).rows()).hasSize(3).extracting(Standing.Row::entry).doesNotContain(team);
		Agreement.check(this.context, day, "withdrawn before the draw");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whoWithdrawsAfterADrawLeavesItsNumberEmpty(boolean byPoints) {
		for (int segment = 1; segment <= 2; segment++) {
			SmallCompetition day = running(byPoints);
			for (int before = 1; before < segment; before++) {
				day.open(before);
				day.skateRest(before);
			}
			day.draw(segment);
			String team = day.entries().get(1).id().toString();
			withdraw(day, team);
			this.run.open(day.segment(segment), REFEREE);
			day.skateNext(segment);
			assertThat(this.standings.latest(day.segment(segment)).orElseThrow().standing())
				.as("who withdrew is counted neither among those that skated nor among those still to skate")
				.satisfies((standing) -> assertThat(standing.skated()).isEqualTo(1))
				.satisfies((standing) -> assertThat(standing.starters()).isEqualTo(3));
			Agreement.check(this.context, day, "withdrawn after draw " + segment);
			day.skateRest(segment);
			assertOut(day, team, "WITHDRAWN");
			Agreement.check(this.context, day, "segment " + segment + " skated without");
		}
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whoEndsWithoutMarksInEitherSegmentHasNoPlaceAndDoesNotGoOn(boolean byPoints) {
		for (PerformanceStatus how : new PerformanceStatus[] { PerformanceStatus.WITHDRAWN,
				PerformanceStatus.NOT_FINISHED, PerformanceStatus.DISQUALIFIED }) {
			SmallCompetition day = running(byPoints);
			day.open(1);
			PerformanceView first = day.callNext(1);
			this.run.end(first.id(), first.version(), how, "As the rule says.", REFEREE);
			assertThat(entry(day, first.entry().toString()).isEntered()).isEqualTo(how != PerformanceStatus.WITHDRAWN);
			day.skateRest(1);
			assertOut(day, first.entry().toString(), how.name());
			day.open(2);
			assertThat(day.performances(2)).hasSize(3);
			PerformanceView second = day.callNext(2);
			this.run.end(second.id(), second.version(), how, "As the rule says.", REFEREE);
			day.skateRest(2);
			assertOut(day, second.entry().toString(), how.name());
			Agreement.check(this.context, day, how + " in both segments");
		}
	}

	@Test
	void whoWithdrawsIsInNoWordOfWhatIsStillPossible() {
		SmallCompetition day = running(false);
		day.open(1);
		day.skateRest(1);
		String leader = row(day, 0).entry();
		String team = row(day, 0).team();
		day.draw(2);
		withdraw(day, leader);
		this.run.open(day.segment(2), REFEREE);
		day.skateNext(2);
		Standing.Outlook outlook = Objects.requireNonNull(event(day).outlook());
		assertThat(outlook.chances()).isNotEmpty().extracting(Standing.Outlook.Chance::entry).doesNotContain(leader);
		assertThat(outlook.chances()).allSatisfy((chance) -> assertThat(chance.event().worst()).isLessThan(4));
		assertThat(outlook.needs()).noneMatch((need) -> need.english().contains(team));
	}

	@Test
	void aTeamWithNothingLeftToSkateIsNotWithdrawnInPassing() {
		SmallCompetition day = running(false);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		day.skateNext(2);
		EntryView skated = entry(day, day.performances(2).get(0).entry().toString());
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.entries.withdraw(skated.id(), skated.version(), "Left early.", SECRETARY))
			.withMessageContaining("as a correction");
		day.skateRest(2);
		sign(day.segment(1));
		sign(day.segment(2));
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.entries.withdraw(skated.id(), skated.version(), "Left early.", SECRETARY))
			.withMessageContaining("its result is signed. The referee opens the result of")
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("withdrawal-refused"));
		assertThat(row(day, skated.id().toString()).place()).isNotNull();
	}

	@Test
	void aWithdrawalIsTakenBackBySecretaryAloneUntilItsSegmentIsOpen() {
		SmallCompetition day = running(false);
		String team = day.entries().get(2).id().toString();
		withdraw(day, team);
		comeBack(day, team);
		day.draw(1);
		int number = number(day, team);
		withdraw(day, team);
		comeBack(day, team);
		assertThat(number(day, team)).isEqualTo(number);
		withdraw(day, team);
		this.run.open(day.segment(1), REFEREE);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> comeBack(day, team))
			.withMessageContaining("Start number " + number + " of ")
			.withMessageContaining("Two officials take it back");
	}

	@Test
	void aWithdrawalBetweenTwoSegmentsIsTakenBackWithThePlace() {
		SmallCompetition day = running(false);
		day.open(1);
		day.skateRest(1);
		String leader = row(day, 0).entry();
		withdraw(day, leader);
		comeBack(day, leader);
		assertThat(row(day, 0).entry()).isEqualTo(leader);
		withdraw(day, leader);
		day.draw(2);
		comeBack(day, leader);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> this.run.open(day.segment(2), REFEREE))
			.withMessageContaining("was drawn without " + row(day, 0).team());
		withdraw(day, leader);
		this.run.open(day.segment(2), REFEREE);
		comeBack(day, leader);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> day.skateNext(2))
			.withMessageContaining(entry(day, leader).team().name());
		withdraw(day, leader);
		day.skateNext(2);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> comeBack(day, leader))
			.withMessageContaining("was drawn without");
	}

	/**
	 * What was published of a segment that has begun decides nothing about who begins it.
	 */
	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void aWithdrawalBeforeTheFirstCallOfALaterSegmentHoldsNobodyUp(boolean byPoints) {
		SmallCompetition day = running(byPoints);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		PerformanceView first = day.performances(2).get(0);
		this.run.end(first.id(), first.version(), PerformanceStatus.WITHDRAWN, "Ill since this morning.", REFEREE);
		day.skateRest(2);
		assertThat(day.performances(2)).extracting(PerformanceView::status)
			.containsExactly(PerformanceStatus.WITHDRAWN, PerformanceStatus.CLOSED, PerformanceStatus.CLOSED,
					PerformanceStatus.CLOSED);
	}

	private SmallCompetition running(boolean byPoints) {
		return byPoints ? PointsCompetition.running(this.context, 4, 3) : SmallCompetition.running(this.context, 4, 3);
	}

	private void withdraw(SmallCompetition day, String entry) {
		EntryView view = entry(day, entry);
		this.entries.withdraw(view.id(), view.version(), "Two skaters ill.", SECRETARY);
	}

	private void comeBack(SmallCompetition day, String entry) {
		EntryView view = entry(day, entry);
		this.entries.reinstate(view.id(), view.version(), "The manager meant another team.", SECRETARY);
	}

	private static EntryView entry(SmallCompetition day, String entry) {
		return day.entries().stream().filter((one) -> one.id().toString().equals(entry)).findFirst().orElseThrow();
	}

	private int number(SmallCompetition day, String entry) {
		return this.context.getBean(StartingOrderDraw.class)
			.ofSegment(day.segment(1))
			.orElseThrow()
			.starts()
			.stream()
			.filter((start) -> start.entry().toString().equals(entry))
			.findFirst()
			.orElseThrow()
			.number();
	}

	private void assertOut(SmallCompetition day, String entry, String status) {
		Standing.Row row = row(day, entry);
		assertThat(row.place()).isNull();
		assertThat(row.status()).isEqualTo(status);
		assertThat(event(day).rows()).as("listed after those with a place")
			.last()
			.satisfies((last) -> assertThat(last.place()).isNull());
	}

	private Standing event(SmallCompetition day) {
		return this.standings.latest(day.event().id()).orElseThrow().standing();
	}

	private Standing.Row row(SmallCompetition day, int index) {
		return event(day).rows().get(index);
	}

	private Standing.Row row(SmallCompetition day, String entry) {
		return event(day).rows().stream().filter((row) -> row.entry().equals(entry)).findFirst().orElseThrow();
	}

	private void sign(SegmentId segment) {
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow().version();
	}

}
