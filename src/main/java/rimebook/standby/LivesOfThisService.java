package rimebook.standby;

import java.time.Duration;
import java.time.Instant;

import org.springframework.stereotype.Component;

import rimebook.performances.ReturnedCard;

/**
 * Cards come back only to the service that was started from a copy of theirs. When they
 * were received is the tablet's word; it has to lie within the life that it names, by the
 * clock of the machine that received them, which may be far ahead of this one's.
 */
@Component
class LivesOfThisService implements ReturnedCard.EarlierLives {

	/** The clock of the next laptop may be behind or before that of the last. */
	private static final Duration CLOCKS = Duration.ofHours(1);

	private final ServiceLives lives;

	LivesOfThisService(ServiceLives lives) {
		this.lives = lives;
	}

	@Override
	public void require(ReturnedCard card) {
		ServiceLife now = this.lives.current();
		boolean before = this.lives.known()
			.stream()
			.anyMatch((life) -> life.number() < now.number() && life.id().equals(card.life())
					&& !card.receivedAt().isBefore(life.beganAt().minus(CLOCKS)));
		if (!before || card.receivedAt().isAfter(latest(now).plus(CLOCKS))) {
			throw OfThisService.refusal();
		}
	}

	/** The end of the lives before, by their own clock or by this one. */
	private static Instant latest(ServiceLife now) {
		ServiceLife.Origin from = now.from();
		return (from != null && from.seenAt().isAfter(now.beganAt())) ? from.seenAt() : now.beganAt();
	}

}
