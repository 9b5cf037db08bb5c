package rimebook.accounts;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * How a personal link stands, as the desk sees it.
 *
 * @param token what it holds, {@code null} where it is shown no longer
 * @param revokedBy who shut it, empty where nobody did
 * @param openedAt when it was opened first, {@code null} where it was not
 */
public record LinkState(LinkStanding standing, @Nullable String token, String issuedBy, Instant issuedAt,
		String revokedBy, @Nullable Instant openedAt) {

	static LinkState of(PersonalLink link, @Nullable String token, Instant now) {
		return new LinkState(link.standing(now), token, link.issuedBy(), link.issuedAt(), link.revokedBy(),
				link.openedAt());
	}

}
