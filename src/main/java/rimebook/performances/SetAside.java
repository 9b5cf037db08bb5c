package rimebook.performances;

import java.time.Instant;
import java.util.List;

import rimebook.entries.EntryId;

/**
 * A skate that does not count, since the whole programme is skated again.
 *
 * @param skate 1 for the first, one more for each time
 * @param reason what the judges mark instead
 * @param calledAt when it was called on the ice, UTC
 * @param lines what was sent and noted for it, one sentence a card or list; empty for
 * nothing
 */
public record SetAside(int startNumber, EntryId entry, int skate, String reason, Instant calledAt, List<String> lines) {

	public SetAside {
		lines = List.copyOf(lines);
	}

}
