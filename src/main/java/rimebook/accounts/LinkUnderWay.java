package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

/**
 * A link that somebody carries to a team.
 *
 * @param carriedBy what carries it, such as a letter
 * @param issuedBy on whose behalf
 * @param askedAt when that was asked for
 */
record LinkUnderWay(UUID id, TeamLinks.GiveLink order, UUID carriedBy, String tokenDigest, String issuedBy,
		Instant issuedAt, Instant askedAt) {

	/** Tell whether the page can still be opened with it. */
	boolean isGood(Instant now) {
		return now.isBefore(this.order.expiresAt());
	}

}
