package rimebook.marks;

import java.time.Instant;
import java.util.UUID;

/** A remark of the referee to the panel. */
public record RemarkView(UUID id, RemarkKind kind, String text, String notedBy, Instant notedAt) {
}
