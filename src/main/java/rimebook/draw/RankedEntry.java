package rimebook.draw;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/**
 * An entry and where it stands before a segment.
 *
 * @param place the place it may share with others, {@code null} if it starts in the
 * segment without one
 */
public record RankedEntry(EntryId entry, @Nullable Integer place) {

}
