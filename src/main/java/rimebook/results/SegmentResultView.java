package rimebook.results;

import java.time.Instant;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/**
 * Where a segment's result stands.
 *
 * @param onIce the team on the ice, or {@code null}
 * @param interrupted whether that team was broken off
 * @param postedAt when it was posted last, UTC; protests against what changed then are
 * timed from it, see {@link Posting}
 * @param refereeSignature name of the referee who signed, else empty
 * @param accountantSignature name of the accountant who signed, else empty
 * @param version to be given back with every act on it
 */
public record SegmentResultView(SegmentId segment, SegmentResultState state, @Nullable EntryId onIce,
		boolean interrupted, @Nullable Instant postedAt, String postedBy, String refereeSignature,
		@Nullable Instant refereeSignedAt, String accountantSignature, @Nullable Instant accountantSignedAt,
		int version) {

	/** The road of a segment's result. */
	public enum SegmentResultState {

		/** Teams are to skate, or the result was not posted yet. */
		RUNNING,

		/** Posted with its time: the protest clock runs, signatures are collected. */
		POSTED,

		/** Signed by referee and accountant. */
		OFFICIAL;

		Sentence spoken() {
			return Sentence.of("results.state." + name().toLowerCase(Locale.ROOT));
		}

	}

	/**
	 * One posting of a segment's result. A posted result that changes is posted anew with
	 * its change, and protests against what changed are timed from then.
	 *
	 * @param number the version of the segment's standing that was posted
	 * @param postedAt when, UTC
	 * @param changed what had changed since the posting before; empty for the first
	 * @param conductUntil until when protests against anything but the computation are
	 * heard
	 * @param calculationUntil until when protests against the computation are heard
	 */
	public record Posting(SegmentId segment, int number, Instant postedAt, String postedBy, String changed,
			Instant conductUntil, Instant calculationUntil) {
	}

}
