package rimebook.marks;

import java.time.Instant;

/** A remark of the referee to the panel. */
public record RemarkView(RemarkKind kind, String text, String notedBy, Instant notedAt) {
}
