package rimebook.draw;

import java.time.Instant;
import java.util.List;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A drawn starting order. The highest number of a segment is the one in force.
 *
 * @param number 1 for the first draw of the segment, 2 for the re-draw and so on
 * @param how by what it was drawn
 * @param act when and by whom it was drawn
 * @param starts in the order of the start
 */
public record StartingOrderView(SegmentId segment, int number, Procedure how, Act act, List<Start> starts) {

	public StartingOrderView {
		starts = List.copyOf(starts);
	}

	/**
	 * One line of a starting order.
	 *
	 * @param number the starting number, 1 first; never shifted, whoever withdraws
	 * @param group the warm-up group, 1 first
	 * @param entry who starts; ask {@code entries} whether it has withdrawn since
	 * @param ticket the SHA-256 digest that decided, in hexadecimal digits
	 * @param digested the text it is the digest of, with the names as they were in the
	 * draw
	 */
	public record Start(int number, int group, EntryId entry, String ticket, String digested) {

		/** The shell command that repeats the ticket. */
		public String command() {
			return new DrawTicket(this.digested).command();
		}

	}

	/**
	 * Tell whether that number was given after the draw, to a team that came later. The
	 * ticket of such a team decided nothing.
	 */
	public boolean isAdded(int number) {
		return number > this.starts.size() - this.how.added();
	}

	/** The text that decided. */
	public String seed() {
		return this.how.seed();
	}

	/**
	 * By what a starting order was drawn, so that anybody can repeat it.
	 *
	 * @param seed the text that decided
	 * @param added how many at the end of the order were not drawn but came after the
	 * draw
	 */
	public record Procedure(DrawMethod method, String seed, int groupMaximum, int added) {

		/** An order in which everybody was drawn. */
		public Procedure(DrawMethod method, String seed, int groupMaximum) {
			this(method, seed, groupMaximum, 0);
		}

	}

	/**
	 * That a starting order was drawn.
	 *
	 * @param drawnBy the name of the person who drew
	 * @param reason why it was drawn again, or a team was added; empty for the first draw
	 */
	public record Act(Instant drawnAt, String drawnBy, String reason) {
	}

}
