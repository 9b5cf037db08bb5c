package rimebook.performances;

import java.time.Instant;
import java.util.UUID;

/**
 * The service's word that it knows a remark was seen.
 *
 * @param id the remark's identity
 * @param seenAt when the service first heard that the seat saw it, UTC
 */
public record SeenRemark(UUID id, Instant seenAt) {
}
