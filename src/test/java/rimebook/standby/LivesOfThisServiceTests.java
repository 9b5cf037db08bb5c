package rimebook.standby;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import rimebook.performances.ReturnedCard;
import rimebook.shared.ConflictException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

/** Two laptops seldom have the same time, and one with an empty battery has none. */
class LivesOfThisServiceTests {

	private static final Instant MORNING = Instant.parse("2027-02-13T08:00:00Z");

	private static final Instant NOON = Instant.parse("2027-02-13T12:00:00Z");

	private final ServiceLife first = new ServiceLife(1, UUID.randomUUID(), MORNING, null);

	@Test
	void ofTheLifeBeforeACardIsTaken() {
		assertThatCode(() -> require(NOON.minusSeconds(1), NOON)).doesNotThrowAnyException();
	}

	@Test
	void aClockThatIsDaysBehindLosesNoCard() {
		assertThatCode(() -> require(NOON.minusSeconds(1), NOON.minus(Duration.ofDays(900))))
			.doesNotThrowAnyException();
	}

	@Test
	void aClockThatIsDaysAheadLosesNoCard() {
		assertThatCode(() -> require(NOON.minusSeconds(1), NOON.plus(Duration.ofDays(900)))).doesNotThrowAnyException();
	}

	@Test
	void aCardOfBeforeThatLifeOrOfLongAfterItIsOfAnotherDay() {
		for (Instant receivedAt : List.of(MORNING.minus(Duration.ofHours(2)), NOON.plus(Duration.ofHours(2)))) {
			for (Instant clock : List.of(NOON, NOON.minus(Duration.ofDays(900)))) {
				assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> require(receivedAt, clock))
					.satisfies((refused) -> assertThat(refused.code()).isEqualTo("card-of-another-day"));
			}
		}
	}

	/**
	 * Bring back a card of the first life.
	 * @param began when the second began, by its own clock
	 */
	private void require(Instant receivedAt, Instant began) {
		ServiceLives lives = mock(ServiceLives.class);
		ServiceLife second = new ServiceLife(2, UUID.randomUUID(), began,
				new ServiceLife.Origin("copy", "stick", NOON, 60, NOON, 82));
		given(lives.known()).willReturn(List.of(this.first, second));
		given(lives.current()).willReturn(second);
		new LivesOfThisService(lives).require(new ReturnedCard(this.first.id(), receivedAt));
	}

}
