package rimebook.performances;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A remark of the referee to the panel.
 *
 * @param touch the touch of the clock that it tells of, by the time of the finding;
 * {@code null} for any other remark
 */
public record RemarkView(UUID id, RemarkKind kind, String text, String notedBy, Instant notedAt,
		@Nullable Instant touch) {
}
