package rimebook.audit;

import java.io.Serializable;

/**
 * Whether the record is whole.
 *
 * @param lines how many lines were found good
 * @param head the digest of the last good line
 * @param firstBroken the number of the first line that is not as it was written, 0 if all
 * are
 * @param why what is wrong with that line, empty if nothing is
 * @param alone how many of the good lines are known by their digests only, in a database
 * that was restored from the archive of one of several competitions
 */
public record RecordFinding(long lines, String head, long firstBroken, String why, long alone) implements Serializable {

	private static final int SHORT = 12;

	/** A finding where every line is here. */
	public RecordFinding(long lines, String head, long firstBroken, String why) {
		this(lines, head, firstBroken, why, 0);
	}

	static RecordFinding whole(long lines, String head) {
		return whole(lines, head, 0);
	}

	static RecordFinding whole(long lines, String head, long alone) {
		return new RecordFinding(lines, head, 0, "", alone);
	}

	static RecordFinding broken(RecordVerification.Head good, long line, String why) {
		return new RecordFinding(good.lines(), good.digest(), line, why, 0);
	}

	/** Tell whether every line is as it was written and none is missing. */
	public boolean isWhole() {
		return this.why.isEmpty();
	}

	/** The first digits of the head, enough to compare by eye. */
	public String shortHead() {
		return this.head.substring(0, SHORT) + "…";
	}

	/** The finding in one sentence. */
	public String sentence() {
		if (isWhole()) {
			return "The record is whole: " + this.lines + (this.lines == 1 ? " line" : " lines") + ", head " + this.head
					+ ((this.alone == 0) ? "" : "; of " + this.alone
							+ " of them only the digest is here, since what they are about is elsewhere");
		}
		return "The record is broken at line " + this.firstBroken + ": " + this.why + " " + this.lines
				+ (this.lines == 1 ? " line before it is as it was written."
						: " lines before it are as they were written.");
	}

}
