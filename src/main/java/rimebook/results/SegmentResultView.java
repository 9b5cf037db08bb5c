package rimebook.results;

import java.time.Instant;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/**
 * Where a segment's result stands.
 *
 * @param posted when it was posted last, {@code null} before that; protests against what
 * changed then are timed from it, see {@link Posting}
 * @param standing how many standings of it there were; the number of the newest
 * @param version to be given back with every act on it; it counts what happens on the
 * ice, too
 */
public record SegmentResultView(SegmentId segment, SegmentResultState state, Ice ice, @Nullable Posted posted,
		Signatures signatures, int standing, int version) {

	/**
	 * A print of what is posted and signed: it stays the same while a team is called or
	 * broken off, and differs with each new standing, state and signature.
	 */
	public String print() {
		return Integer.toHexString(List.of(this.state.name(), String.valueOf(this.posted), this.signatures.toString(),
				String.valueOf(this.standing))
			.hashCode());
	}

	/** The team on the ice, {@code null} for none. */
	public @Nullable EntryId onIce() {
		return this.ice.team();
	}

	/** Tell whether the team on the ice was broken off. */
	public boolean interrupted() {
		return this.ice.interrupted();
	}

	/** When it was posted last, UTC; {@code null} before that. */
	public @Nullable Instant postedAt() {
		return (this.posted != null) ? this.posted.at() : null;
	}

	/**
	 * What happens on the ice.
	 *
	 * @param team the team that is there, or {@code null}
	 * @param interrupted whether it was broken off
	 */
	public record Ice(@Nullable EntryId team, boolean interrupted) {
	}

	/**
	 * That a result was posted.
	 *
	 * @param at when, UTC
	 * @param by the name of who did it
	 */
	public record Posted(Instant at, String by) {
	}

	/** The two signatures that make a result official. */
	public record Signatures(Signature referee, Signature accountant) {

		/** The signature of one of the two. */
		public Signature of(Signatories.Signatory signatory) {
			return (signatory == Signatories.Signatory.REFEREE) ? this.referee : this.accountant;
		}

	}

	/**
	 * A signature, or the place for it.
	 *
	 * @param name of who signed, empty before that
	 * @param at when, UTC; {@code null} before that
	 */
	public record Signature(String name, @Nullable Instant at) {
	}

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
	 * @param changed what had changed since the posting before; empty for the first
	 * @param conductUntil until when protests against anything but the computation are
	 * heard
	 * @param calculationUntil until when protests against the computation are heard
	 */
	public record Posting(SegmentId segment, int number, Posted posted, String changed, Instant conductUntil,
			Instant calculationUntil) {

		/** When, UTC. */
		public Instant postedAt() {
			return this.posted.at();
		}

		/** The name of who posted it. */
		public String postedBy() {
			return this.posted.by();
		}

	}

}
