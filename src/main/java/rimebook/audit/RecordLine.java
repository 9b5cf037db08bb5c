package rimebook.audit;

import java.time.Instant;

/**
 * One line of the record.
 *
 * @param link its place in the chain
 * @param writtenAt when, to the millisecond
 * @param who who did it
 * @param thing what changed
 * @param change what was done
 */
record RecordLine(Link link, Instant writtenAt, Who who, Thing thing, Change change) {

	private static final String ELSEWHERE = "A line about something that was not in the archive from which this "
			+ "database was restored. Only its digest came along.";

	/** The form in which lines are written now. */
	static final int FORM = 2;

	/** The form without the actor's identity. */
	static final int FORM_WITHOUT_ID = 1;

	/** The form of a line of which only its link was kept. */
	static final int FORM_ALONE = 0;

	/** A line of which only its link is known. */
	static RecordLine alone(Link link) {
		return new RecordLine(new Link(link.number(), FORM_ALONE, link.previousDigest(), link.digest()), Instant.EPOCH,
				new Who("", "", "", ""), new Thing("record", "", ""),
				new Change("record.line-elsewhere", "", ELSEWHERE, ""));
	}

	/** The same line with the digest that it should have. */
	RecordLine sealed() {
		return new RecordLine(
				new Link(this.link.number(), this.link.form(), this.link.previousDigest(), ChainDigest.of(this)),
				this.writtenAt, this.who, this.thing, this.change);
	}

	/**
	 * Tell whether its digest is its own. Of a line of which only the link is known the
	 * digest is believed: the next line's digest covers it.
	 */
	boolean isAsWritten() {
		return this.link.isAlone() ? equals(alone(this.link)) : this.link.digest().equals(ChainDigest.of(this));
	}

	/** What was done in words: {@code seat.code-issued} becomes "seat code issued". */
	public String actionWords() {
		return this.change.action().replace('.', ' ').replace('-', ' ');
	}

	/** Its place in the chain, from 1. */
	public long number() {
		return this.link.number();
	}

	/**
	 * A line's place in the chain.
	 *
	 * @param number its place in the chain, from 1
	 * @param form which fields its digest covers, see the package: 1 for lines written
	 * before there were identities, {@link #FORM_ALONE} where nothing else is known of
	 * the line, else {@link #FORM}
	 * @param previousDigest the digest of the line before
	 * @param digest the digest of this line, see the package
	 */
	record Link(long number, int form, String previousDigest, String digest) {

		/** Tell whether nothing else is known of the line. */
		boolean isAlone() {
			return this.form == FORM_ALONE;
		}

	}

	/**
	 * Who did it, as it is written.
	 *
	 * @param actor who did it, the name they went by at the time
	 * @param actorId who did it, for ever, as {@link rimebook.shared.Actor#id()}; empty
	 * in a line of form 1
	 * @param role the role they acted in
	 * @param device from where
	 */
	record Who(String actor, String actorId, String role, String device) {
	}

	/**
	 * What changed.
	 *
	 * @param subject what kind of thing changed
	 * @param subjectId which one
	 * @param evidence the digest of what is stored of the thing after the act, see
	 * {@link Evidence}; empty where nothing is
	 */
	record Thing(String subject, String subjectId, String evidence) {
	}

	/**
	 * What was done.
	 *
	 * @param action what was done, such as {@code entry.withdrawn}
	 * @param before what was there before, empty if nothing
	 * @param after what is there now, empty if nothing
	 * @param reason why, empty where no reason is asked for
	 */
	record Change(String action, String before, String after, String reason) {
	}

}
