package rimebook.tablets;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.JudgingMethod;
import rimebook.performances.PerformanceId;
import rimebook.points.PointsTasks;
import rimebook.remarks.RemarkReceipts;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;

/**
 * All that one seat may see: the performance to mark and the seat's own earlier cards.
 *
 * @param heading where the seat judges, and what
 * @param course how far the segment has come
 * @param marking what the seat has to give
 * @param decided what was decided that the seat has to know
 */
public record JudgeTable(Heading heading, Course course, Marking marking, Decided decided) {

	/**
	 * The performance on the ice.
	 *
	 * @param team the team's name
	 * @param remarks what the referee tells the panel, oldest first
	 */
	public record Now(PerformanceId performance, int startNumber, String team, String club,
			List<RemarkReceipts.ToSeat> remarks) {
	}

	/**
	 * A performance whose closed cards were opened again.
	 *
	 * @param performance as one on the ice
	 * @param points what the seat has to give it in points judging, with its own card;
	 * {@code null} in placement judging, where the card is among the seat's cards
	 */
	public record Reopened(Now performance, PointsTasks.@Nullable PointsTask points) {
	}

	/**
	 * A correction of a closed card of this seat, by two officials.
	 *
	 * @param id the identity of the version that counts since
	 * @param segment the segment's name
	 * @param before what the judge gave, in words: both marks, or the lines that differ
	 * @param after what counts since
	 */
	public record Corrected(UUID id, int startNumber, String segment, String before, String after) {
	}

	/**
	 * A card of this seat; marks in hundredths.
	 *
	 * @param closed whether it can no longer be changed
	 */
	public record OwnCard(PerformanceId performance, int startNumber, String team, Version version, boolean closed) {

		/** The version of a card that counts. */
		public record Version(int first, int second, int sequence, Instant receivedAt) {
		}

	}

	/**
	 * Where a seat judges, and what.
	 *
	 * @param seat the seat's label
	 * @param event the event's name
	 * @param segment the segment's name, empty while none is open
	 * @param kind what the segment asks for, {@code null} while none is open
	 * @param secondLook which of two equal totals is better on this judge's own card
	 */
	public record Heading(String seat, String event, String segment, @Nullable SegmentKind kind,
			PlacementRules.CardTieBreak secondLook) {
	}

	/**
	 * How far the segment has come, with the seat's own cards.
	 *
	 * @param now the performance on the ice, or {@code null} between two
	 * @param cards the seat's cards of the segment, in the order skated
	 * @param skated how many performances of the segment are done
	 * @param starters how many performances the segment has
	 */
	public record Course(@Nullable Now now, List<OwnCard> cards, int skated, int starters) {
	}

	/**
	 * What the seat has to give.
	 *
	 * @param method how the event is judged
	 * @param points what the seat has to give the performance on the ice in points
	 * judging; {@code null} between two and in placement judging
	 * @param reopened the performance whose closed cards were opened again, to be sent
	 * like those of the performance on the ice; {@code null} while there is none
	 */
	public record Marking(JudgingMethod method, PointsTasks.@Nullable PointsTask points, @Nullable Reopened reopened) {
	}

	/**
	 * What was decided that a seat has to know.
	 *
	 * @param panel what the referee decided about this seat, as a sentence; {@code null}
	 * where it counts as drawn
	 * @param zeroMark what a mark of 0.0 means in placement judging
	 * @param ended the performances of the segment that the referee ended without marks,
	 * and those set aside
	 * @param corrected what officials changed in the seat's closed cards of the event
	 */
	public record Decided(@Nullable String panel, PlacementRules.ZeroMark zeroMark, List<PerformanceId> ended,
			List<Corrected> corrected) {
	}

}
