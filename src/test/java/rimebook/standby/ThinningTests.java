package rimebook.standby;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class ThinningTests {

	private static final Instant NOW = Instant.parse("2027-02-13T14:05:00Z");

	@Test
	void allOfTheLastTenMinutesAreKept() {
		List<Instant> copies = every(Duration.ofSeconds(30), 20);
		assertThat(Thinning.kept(copies, NOW)).containsExactlyInAnyOrderElementsOf(copies);
	}

	@Test
	void thenTheNewestOfEachTenMinutesThenOfEachHourThenOfEachDay() {
		List<Instant> copies = every(Duration.ofMinutes(1), 5 * 24 * 60);
		Set<Instant> kept = Thinning.kept(copies, NOW);
		assertThat(kept).contains(NOW.minus(Duration.ofMinutes(9)), Instant.parse("2027-02-13T13:49:00Z"),
				Instant.parse("2027-02-13T13:39:00Z"), Instant.parse("2027-02-13T09:59:00Z"),
				Instant.parse("2027-02-10T23:59:00Z"));
		assertThat(kept).doesNotContain(Instant.parse("2027-02-13T13:48:00Z"), Instant.parse("2027-02-13T09:58:00Z"));
		assertThat(kept).hasSizeBetween(60, 90);
	}

	/** What was thinned a moment ago is thinned in the same way now. */
	@Test
	void thinningAgainKeepsTheSame() {
		Set<Instant> kept = Thinning.kept(every(Duration.ofMinutes(1), 3000), NOW);
		assertThat(Thinning.kept(kept, NOW)).isEqualTo(kept);
	}

	@Test
	void theOnlyCopyIsKeptHoweverOldItIs() {
		Instant old = NOW.minus(Duration.ofDays(400));
		assertThat(Thinning.kept(List.of(old), NOW)).containsExactly(old);
	}

	@Test
	void aClockThatWentBackTakesNothingAway() {
		List<Instant> future = Stream.of(1, 2, 3).map((minutes) -> NOW.plus(Duration.ofMinutes(minutes))).toList();
		assertThat(Thinning.kept(future, NOW)).hasSize(3);
	}

	private static List<Instant> every(Duration step, int count) {
		return IntStream.range(0, count).mapToObj((at) -> NOW.minus(step.multipliedBy(at))).toList();
	}

}
