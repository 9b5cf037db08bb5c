package rimebook.audit;

import java.time.Instant;

/**
 * One line of the record.
 *
 * @param number its place in the chain, from 1
 * @param form which fields its digest covers, see the package: 1 for lines written before
 * there were identities, else {@link #FORM}
 * @param writtenAt when, to the millisecond
 * @param actor who did it, the name they went by at the time
 * @param actorId who did it, for ever, as {@link rimebook.shared.Actor#id()}; empty in a
 * line of form 1
 * @param role the role they acted in
 * @param device from where
 * @param subject what kind of thing changed
 * @param subjectId which one
 * @param action what was done, such as {@code entry.withdrawn}
 * @param before what was there before, empty if nothing
 * @param after what is there now, empty if nothing
 * @param reason why, empty where no reason is asked for
 * @param evidence the digest of what is stored of the thing after the act, see
 * {@link Evidence}; empty where nothing is
 * @param previousDigest the digest of the line before
 * @param digest the digest of this line, see the package
 */
record RecordLine(long number, int form, Instant writtenAt, String actor, String actorId, String role, String device,
		String subject, String subjectId, String action, String before, String after, String reason, String evidence,
		String previousDigest, String digest) {

	/** The form in which lines are written now. */
	static final int FORM = 2;

	/** The form without the actor's identity. */
	static final int FORM_WITHOUT_ID = 1;

	/** The same line with the digest that it should have. */
	RecordLine sealed() {
		return new RecordLine(this.number, this.form, this.writtenAt, this.actor, this.actorId, this.role, this.device,
				this.subject, this.subjectId, this.action, this.before, this.after, this.reason, this.evidence,
				this.previousDigest, ChainDigest.of(this));
	}

	/** What was done in words: {@code seat.code-issued} becomes "seat code issued". */
	public String actionWords() {
		return this.action.replace('.', ' ').replace('-', ' ');
	}

}
