package rimebook.keying;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;

import rimebook.competition.SegmentPlace;
import rimebook.panels.SeatView;

/**
 * Cards to be filled in by hand.
 *
 * @param printedAt in the rink's time
 * @param seats that have a card each
 * @param starts the teams in starting order
 * @param components to be marked in points judging, none in placement judging
 */
record BlankCards(SegmentPlace at, ZonedDateTime printedAt, List<SeatView> seats, List<Start> starts,
		List<String> components) {

	/** Rows for elements that were not planned. */
	private static final int SPARE = 3;

	/** Rows where nothing was planned. */
	private static final int UNPLANNED = 14;

	/** Those who still take part. */
	public List<Start> skating() {
		return this.starts.stream().filter(Start::skates).toList();
	}

	/**
	 * One team.
	 *
	 * @param skates whether the team still takes part
	 * @param planned the codes of the elements it means to skate, may be none
	 */
	record Start(int number, String team, String club, boolean skates, List<String> planned) {

		/** One row for each element that may be called, with what is planned there. */
		public List<String> rows() {
			int spare = this.planned.isEmpty() ? UNPLANNED : SPARE;
			return Stream.concat(this.planned.stream(), Stream.generate(() -> "").limit(spare)).toList();
		}

	}

}
