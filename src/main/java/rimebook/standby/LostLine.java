package rimebook.standby;

import java.time.Instant;

/**
 * A line of the record as it lies at the second place after the newest copy: what is lost
 * if the service ends now, but is known to have been.
 *
 * @param number its number on the record
 * @param at when it was written, UTC
 * @param actor who did it
 * @param role the role acted in
 * @param subject what kind of thing changed
 * @param subjectId which one
 * @param action what was done
 * @param before what was there before
 * @param after what was there then
 * @param reason why
 * @param digest its digest
 */
record LostLine(long number, Instant at, String actor, String role, String subject, String subjectId, String action,
		String before, String after, String reason, String digest) {
}
