package rimebook.standby;

import java.time.Duration;

import org.springframework.stereotype.Component;

import rimebook.performances.ReturnedCard;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Cards come back only to the service that was started from a copy of theirs. When they
 * were received is the tablet's word; it has to lie within the life that it names.
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
		if (!before || card.receivedAt().isAfter(now.beganAt().plus(CLOCKS))) {
			throw new ConflictException("card-of-another-day", Sentence.of("standby.card-of-another-day"));
		}
	}

}
