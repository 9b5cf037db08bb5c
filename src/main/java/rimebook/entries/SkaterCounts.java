package rimebook.entries;

import java.util.Collection;
import java.util.Map;

/**
 * Tells how many people skate for an entry, and nothing of any of them. Whoever knows the
 * rosters implements it.
 */
public interface SkaterCounts {

	/**
	 * How many are to be on the ice for each of these entries; alternates are not
	 * counted. One question; an entry without a roster is left out.
	 */
	Map<EntryId, Integer> of(Collection<EntryId> entries);

}
