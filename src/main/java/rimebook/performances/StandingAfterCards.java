package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;

/** Knows the standing that closing the cards of a segment has made. */
@FunctionalInterface
public interface StandingAfterCards {

	/** The newest standing of a segment; empty before its first team is done. */
	Optional<Placed> newest(SegmentId segment);

	/**
	 * The teams that have a place.
	 *
	 * @param version the number of the result's version
	 * @param skated how many of the starters are done
	 * @param starters how many teams are to skate, those that withdrew left out
	 * @param lines best first
	 */
	record Placed(int version, int skated, int starters, List<Line> lines) {

		public Placed {
			lines = List.copyOf(lines);
		}

	}

	/**
	 * One team.
	 *
	 * @param before its place in the version before, {@code null} if it had none
	 */
	record Line(int place, @Nullable Integer before, int startNumber, String team) {

		/** Tell whether it got its first place with this version. */
		public boolean isNew() {
			return this.before == null;
		}

		/** Tell whether it had another place in the version before. */
		public boolean isMoved() {
			return this.before != null && this.before != this.place;
		}

	}

}
