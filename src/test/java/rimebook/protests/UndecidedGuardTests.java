package rimebook.protests;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.results.SegmentResultView;
import rimebook.results.SignatureChecklist;
import rimebook.results.Standings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.RETURNS_DEEP_STUBS;
import static org.mockito.Mockito.mock;

class UndecidedGuardTests {

	private static final SegmentId SEGMENT = new SegmentId(new UUID(1, 1));

	private static final Instant POSTED = Instant.parse("2027-02-13T12:00:00Z");

	@ParameterizedTest
	@CsvSource({ "true, 2027-02-13T12:30:00Z, MISSING", "true, 2027-02-13T12:30:01Z, MET",
			"false, 2027-02-13T12:30:00Z, DUE", "false, 2027-02-13T12:30:01Z, MET" })
	void theSignatureWaitsForTheEndOfTheTimeOnlyWhereItIsSetSo(boolean waits, Instant now,
			SignatureChecklist.SignatureCondition.State state) {
		Standings standings = mock(Standings.class);
		given(standings.postings(SEGMENT)).willReturn(List.of(posting(POSTED.minusSeconds(3600)), posting(POSTED)));
		Competitions competitions = mock(Competitions.class, RETURNS_DEEP_STUBS);
		given(competitions.competition(any(CompetitionId.class)).zone()).willReturn(ZoneId.of("Europe/Helsinki"));
		given(competitions.eventOf(SEGMENT).competition()).willReturn(new CompetitionId(new UUID(2, 2)));
		given(competitions.eventOf(SEGMENT).judging().signatureWaits()).willReturn(waits);
		UndecidedGuard guard = new UndecidedGuard(mock(ProtestRepository.class), mock(CorrectionRepository.class),
				standings, competitions, Clock.fixed(now, ZoneOffset.UTC));
		SignatureChecklist.SignatureCondition time = guard.conditions(SEGMENT).get(2);
		assertThat(time.state()).isEqualTo(state);
		assertThat(time.sentence()).asString().contains("until 13 Feb 14:30 EET");
	}

	private static SegmentResultView.Posting posting(Instant at) {
		return new SegmentResultView.Posting(SEGMENT, 1, new SegmentResultView.Posted(at, "Bo Tally"), "",
				at.plus(Duration.ofMinutes(30)), at.plus(Duration.ofHours(24)));
	}

}
