package rimebook.standby;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * One life of the database, from its beginning or from its start from a copy until it is
 * lost.
 *
 * @param number 1 for the first
 * @param id by which everybody can tell it from another
 * @param from the copy that it began with, {@code null} for the first
 */
record ServiceLife(int number, UUID id, Instant beganAt, @Nullable Origin from) {

	/**
	 * The copy that a life began with, and what is known of the time after it.
	 *
	 * @param copy its name
	 * @param folder where it lay
	 * @param knownUntil the moment before which everything is in it, UTC
	 * @param knownLine the last line of the record in it
	 * @param seenAt when the life before gave its last sign, UTC; the copy's moment where
	 * there is none
	 * @param seenLine the last line of the record then
	 */
	record Origin(String copy, String folder, Instant knownUntil, long knownLine, Instant seenAt, long seenLine) {

		/**
		 * Tell whether it was restored with other tools, so that no list of what was lost
		 * is known.
		 */
		public boolean isByOtherTools() {
			return this.folder.isEmpty();
		}

		/** How many lines of the record are lost, as far as is known. */
		public long lostLines() {
			return Math.max(0, this.seenLine - this.knownLine);
		}

	}

}
