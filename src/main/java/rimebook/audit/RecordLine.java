package rimebook.audit;

import java.time.Instant;

/**
 * One line of the record.
 *
 * @param number its place in the chain, from 1
 * @param writtenAt when, to the millisecond
 * @param actor who did it
 * @param role the role they acted in
 * @param device from where
 * @param subject what kind of thing changed
 * @param subjectId which one
 * @param action what was done, such as {@code entry.withdrawn}
 * @param before what was there before, empty if nothing
 * @param after what is there now, empty if nothing
 * @param reason why, empty where no reason is asked for
 * @param previousDigest the digest of the line before
 * @param digest the digest of this line, see the package
 */
public record RecordLine(long number, Instant writtenAt, String actor, String role, String device, String subject,
		String subjectId, String action, String before, String after, String reason, String previousDigest,
		String digest) {

	/** What was done in words: {@code seat.code-issued} becomes "seat code issued". */
	public String actionWords() {
		return this.action.replace('.', ' ').replace('-', ' ');
	}

}
