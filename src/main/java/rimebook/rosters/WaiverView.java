package rimebook.rosters;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.rosters.eligibility.Rule;

/**
 * That a rule is not held against a team, or against one of its people.
 *
 * @param place whose place on the roster it is about, {@code null} for the whole team
 * @param takenBack {@code null} while it holds
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record WaiverView(UUID id, EntryId entry, Rule rule, RosterView.@Nullable PlaceId place, Word given,
		@Nullable Word takenBack, int version) {

	/** Tell whether it was not taken back. */
	public boolean holds() {
		return this.takenBack == null;
	}

	/**
	 * What somebody said, and when.
	 */
	public record Word(String reason, String by, Instant at) {
	}

}
