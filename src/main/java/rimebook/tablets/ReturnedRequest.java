package rimebook.tablets;

import java.time.Instant;
import java.util.UUID;

import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

import rimebook.performances.ReturnedCard;

/**
 * What a tablet adds to a card that the service acknowledged and lacks since it was
 * started from a copy.
 */
record ReturnedRequest(
		@NotNull(message = "is missing; give the first name in the header Rimebook-Life of then") @Nullable UUID life,
		@NotNull(message = "is missing; give receivedAt of the acknowledgement") @Nullable Instant receivedAt) {

	static @Nullable ReturnedCard read(@Nullable ReturnedRequest request) {
		return (request != null && request.life != null && request.receivedAt != null)
				? new ReturnedCard(request.life, request.receivedAt) : null;
	}

}
