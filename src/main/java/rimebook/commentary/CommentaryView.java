package rimebook.commentary;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.live.ToldSegment;
import rimebook.wording.Sentence;

/**
 * Everything that may be told of a segment at a moment.
 *
 * @param told what the public is told of it
 * @param now the team on the ice, {@code null} for none
 * @param next the teams that come next, at most three
 * @param last the team that was marked last, {@code null} where that is no news
 * @param table how the segment stands
 * @param whole how the event stands, empty in its first segment
 * @param outlook what can still happen
 */
public record CommentaryView(CompetitionView competition, ToldSegment told, @Nullable TeamCard now, List<TeamCard> next,
		@Nullable LastMarked last, List<Placed> table, List<Placed> whole, Outlook outlook) {

	public CommentaryView {
		next = List.copyOf(next);
		table = List.copyOf(table);
		whole = List.copyOf(whole);
	}

	/** Tell whether the teams have points. */
	public boolean isByPoints() {
		return this.told.event().isJudgedByPoints();
	}

	/**
	 * The team that was marked last.
	 *
	 * @param place its place in the segment, {@code null} for none
	 * @param status the last part of the keys {@code live.status.…}, empty where it
	 * skated
	 * @param marks what the panel gave it
	 */
	public record LastMarked(String entry, String team, String said, @Nullable Integer place, String status,
			GivenMarks marks, Sentence changed) {
	}

	/**
	 * A team in a standing.
	 *
	 * @param place {@code null} without one
	 * @param status the last part of the keys {@code live.status.…}, empty where it
	 * skated
	 * @param total points, or the factored total, in hundredths; {@code null} where there
	 * is none
	 * @param behind how many points it is behind the first, in hundredths; {@code null}
	 * where that says nothing
	 */
	public record Placed(String entry, @Nullable Integer place, boolean shared, String team, String status,
			@Nullable Integer total, @Nullable Integer behind) {
	}

	/**
	 * What can still happen, as it was published.
	 *
	 * @param needs what the last teams need
	 * @param chances the places that teams can still get, the one on the ice first
	 * @param flips what the newest team changed between earlier ones
	 */
	public record Outlook(List<Sentence> needs, List<Sentence> chances, List<Sentence> flips) {

		static final Outlook NONE = new Outlook(List.of(), List.of(), List.of());

		public Outlook {
			needs = List.copyOf(needs);
			chances = List.copyOf(chances);
			flips = List.copyOf(flips);
		}

		/** Tell whether there is nothing to say. */
		public boolean isEmpty() {
			return this.needs.isEmpty() && this.chances.isEmpty() && this.flips.isEmpty();
		}

	}

}
