package rimebook.protests;

import java.time.Duration;
import java.time.Instant;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** ISU General Regulations 2012, Rule 123 paragraphs 3 and 4. */
class ProtestClockTests {

	private static final Instant POSTED = Instant.parse("2027-02-13T12:00:00Z");

	private final ProtestClock clock = new ProtestClock(
			new ProtestSettings(Duration.ofMinutes(30), Duration.ofHours(24), false));

	@Test
	void hearsConductUntilTheLastMillisecondOfThirtyMinutes() {
		Instant limit = POSTED.plus(Duration.ofMinutes(30));
		assertThat(this.clock.refusal(ProtestCategory.CONDUCT, limit, POSTED)).isEmpty();
		assertThat(this.clock.refusal(ProtestCategory.CONDUCT, limit.plusMillis(1), POSTED)).isPresent();
	}

	@Test
	void hearsComputationForADay() {
		Instant limit = POSTED.plus(Duration.ofHours(24));
		assertThat(this.clock.refusal(ProtestCategory.CALCULATION, limit, POSTED)).isEmpty();
		assertThat(this.clock.refusal(ProtestCategory.CALCULATION, limit.plusMillis(1), POSTED).orElseThrow())
			.contains("1440 minutes");
	}

	@Test
	void hearsBeforeThePosting() {
		assertThat(this.clock.refusal(ProtestCategory.CONDUCT, POSTED, null)).isEmpty();
	}

	@Test
	void neverHearsAnEvaluation() {
		assertThat(this.clock.refusal(ProtestCategory.EVALUATION, POSTED, POSTED).orElseThrow()).contains("Rule 123");
		assertThat(this.clock.refusal(ProtestCategory.EVALUATION, POSTED, null)).isPresent();
	}

}
