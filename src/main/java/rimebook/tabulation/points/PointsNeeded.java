package rimebook.tabulation.points;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * What a team still to skate needs. A place is reached by being level with whoever holds
 * it now, which shares it, or by being ahead. For the last team to skate this is what it
 * needs in the end; for one with others behind it, what it needs to be there when it
 * leaves the ice.
 */
public final class PointsNeeded {

	private static final Points LEAST = new Points(1);

	private PointsNeeded() {
	}

	/**
	 * Tell what each place of a segment takes.
	 * @param standing of the segment so far
	 * @return one for each place somebody holds, from the first on; behind them every
	 * total is enough
	 */
	public static List<ScoreNeeded> inSegment(PointsStanding standing) {
		Set<Integer> seen = new HashSet<>();
		return standing.rows()
			.stream()
			.filter((row) -> row.place() != null && seen.add(row.place()))
			.map((row) -> inSegment(row, standing.tieBreak()))
			.toList();
	}

	private static ScoreNeeded inSegment(PointsStanding.ScoredEntry holder, SegmentRules.TieBreak tieBreak) {
		int place = Objects.requireNonNull(holder.place());
		PerformanceScore score = Objects.requireNonNull(holder.score());
		return tieBreak.criterion()
			.map((part) -> new ScoreNeeded(place, score.total().plus(LEAST),
					new ScoreNeeded.OnEqualTotal(score.total(), part, score.points(part))))
			.orElseGet(() -> new ScoreNeeded(place, score.total(), null));
	}

	/**
	 * Tell what each place of the event takes in its last segment. An equal total of the
	 * event goes by the higher total of the last segment, so one figure says it all.
	 * @param standing of the event so far
	 * @param entry a team of the standing that has only the last of several segments
	 * before it
	 * @return one for each place held by a team that has skated every segment, from the
	 * first on
	 * @throws TabulationException {@code entry-unknown}, or {@code nothing-needed} where
	 * the team has no place, has skated the last segment, has missed an earlier one, or
	 * the event has one segment only
	 */
	public static List<ScoreNeeded> inEvent(PointsEventStanding standing, String entry) {
		PointsEventStanding.PointsEventRow own = standing.row(entry)
			.orElseThrow(() -> TabulationException.unknownEntry(entry));
		int missing = (int) own.segments().stream().filter(Objects::isNull).count();
		if (own.place() == null || missing != 1 || last(own) != null) {
			throw Refusal.nothingNeeded(entry);
		}
		Set<Integer> seen = new HashSet<>();
		return standing.rows()
			.stream()
			.filter((row) -> row.complete() && row.place() != null && seen.add(row.place()))
			.map((row) -> inEvent(row, own.total()))
			.toList();
	}

	private static ScoreNeeded inEvent(PointsEventStanding.PointsEventRow holder, Points carried) {
		Points level = holder.total().minus(carried);
		boolean ahead = level.compareTo(Objects.requireNonNull(last(holder)).total()) >= 0;
		return new ScoreNeeded(Objects.requireNonNull(holder.place()), ahead ? level : level.plus(LEAST), null);
	}

	private static EntryTotals.@Nullable SegmentTotal last(PointsEventStanding.PointsEventRow row) {
		return row.segments().get(row.segments().size() - 1);
	}

	/**
	 * The segment total that a team still to skate needs for a place against those who
	 * have skated.
	 *
	 * @param place the place, or a better one; level figures share it
	 * @param total smallest total that is enough whatever it is made of; at 0.00 or below
	 * every total that is not negative is enough
	 * @param orElse a total that is one hundredth lower and enough only with a certain
	 * part of it; none where no such total exists
	 */
	public record ScoreNeeded(int place, Points total, @Nullable OnEqualTotal orElse) {

		/**
		 * Say it in one sentence.
		 * @return for example "1st needs 66.02, or 66.01 with at least 35.86 for the
		 * elements."
		 */
		public Sentence words() {
			return words(Where.UNSAID);
		}

		/**
		 * As {@link #words()}, and say where the place is.
		 * @param where in the segment, or in the event
		 */
		public Sentence words(Where where) {
			Sentence goal = Sentence.of(where.key, this.place);
			if (this.total.compareTo(Points.ZERO) <= 0) {
				return Sentence.of("score.needed.any", goal);
			}
			return Sentence.of("score.needed", goal, ScoreWords.words(this.total),
					(this.orElse != null) ? this.orElse.words() : Sentence.NONE);
		}

		/** What a place is one of. */
		public enum Where {

			/** Clear to the reader without a word. */
			UNSAID("figure.place"),

			/** The segment. */
			SEGMENT("score.needed.in-segment"),

			/** The event. */
			EVENT("score.needed.in-event");

			private final String key;

			Where(String key) {
				this.key = key;
			}

		}

		/**
		 * A total that ties with the team on the place.
		 *
		 * @param total the equal total
		 * @param part elements or components
		 * @param atLeast what the part must have; exactly this much shares the place
		 */
		public record OnEqualTotal(Points total, Criterion part, Points atLeast) {

			Sentence words() {
				return Sentence.of(
						(this.part == Criterion.ELEMENT_POINTS) ? "score.needed.or-elements"
								: "score.needed.or-components",
						ScoreWords.words(this.total), ScoreWords.words(this.atLeast));
			}

		}

	}

}
