package rimebook.competition;

import org.jspecify.annotations.Nullable;

import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * An event, or one segment of it, was cancelled or brought back; published in the
 * transaction of the act.
 *
 * @param event as it is now
 * @param segment the segment it is about, or {@code null} where it is the whole event
 * @param reason why it was cancelled, empty when it was brought back
 */
public record CancellationChanged(EventView event, @Nullable SegmentView segment, String reason,
		AuditedChange change) implements AuditedEvent {
}
