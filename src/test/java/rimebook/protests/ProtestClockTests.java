package rimebook.protests;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import rimebook.competition.SegmentId;
import rimebook.results.SegmentResultView;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

/** ISU General Regulations 2012, Rule 123 paragraphs 3 and 4. */
class ProtestClockTests {

	private static final Instant POSTED = Instant.parse("2027-02-13T12:00:00Z");

	private static final ProtestClock CLOCK = new ProtestClock(
			new ProtestSettings(Duration.ofMinutes(30), Duration.ofHours(24)));

	private static final SegmentResultView.Posting POSTING = new SegmentResultView.Posting(
			new SegmentId(new UUID(1, 1)), 4, new SegmentResultView.Posted(POSTED, "Bo Tally"), "",
			CLOCK.conductUntil(POSTED), CLOCK.calculationUntil(POSTED));

	@Test
	void hearsConductUntilTheLastMillisecondOfThirtyMinutes() {
		Instant limit = POSTED.plus(Duration.ofMinutes(30));
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.CONDUCT, limit, POSTING)).isEmpty();
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.CONDUCT, limit.plusMillis(1), POSTING)).isPresent();
	}

	@Test
	void hearsComputationForADay() {
		Instant limit = POSTED.plus(Duration.ofHours(24));
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.CALCULATION, limit, POSTING)).isEmpty();
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.CALCULATION, limit.plusMillis(1), POSTING)
			.orElseThrow()).isEqualTo(Sentence.of("protests.unheard.late", 1440, 1440))
			.hasToString("Out of time: it was handed in 1440 minutes after the result was posted; 1440 minutes are "
					+ "allowed (ISU General Regulations 2012, Rule 123 paragraph 3, as set for this service).");
	}

	@Test
	void hearsBeforeThePosting() {
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.CONDUCT, POSTED, null)).isEmpty();
	}

	@Test
	void neverHearsAnEvaluation() {
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.EVALUATION, POSTED, POSTING).orElseThrow())
			.isEqualTo(Sentence.of("protests.unheard.evaluation"))
			.hasToString("A protest against how judges or officials evaluated a performance is not allowed "
					+ "(ISU General Regulations 2012, Rule 123 paragraph 4.A.i).");
		assertThat(ProtestClock.refusal(ProtestView.ProtestCategory.EVALUATION, POSTED, null)).isPresent();
	}

}
