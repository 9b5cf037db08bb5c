package rimebook.rosters;

import java.util.Locale;
import java.util.UUID;

import rimebook.entries.EntryId;

/**
 * Somebody who can be reached about a team. Only the secretary and the referee may be
 * shown it.
 *
 * @param entry whose team it is
 * @param phone as it is dialled
 * @param mail an address of electronic mail; empty where none is known
 */
public record ContactView(UUID id, EntryId entry, Kind kind, String name, String phone, String mail) {

	/** What somebody is to a team. */
	public enum Kind {

		/** Trains the team. */
		COACH,

		/** Speaks for the team. */
		MANAGER,

		/** Looks after the team. */
		CHAPERONE,

		/** Is called when something happened. */
		EMERGENCY;

		String inWords() {
			return (this == EMERGENCY) ? "emergency contact" : name().toLowerCase(Locale.ROOT);
		}

	}

}
