package rimebook.draw;

import java.time.Instant;
import java.util.List;

import rimebook.competition.SegmentId;

/**
 * A drawn starting order. The highest number of a segment is the one in force.
 *
 * @param number 1 for the first draw of the segment, 2 for the re-draw and so on
 * @param seed the text that decided
 * @param drawnBy the name of the person who drew
 * @param reason why it was drawn again, empty for the first draw
 * @param starts in the order of the start
 */
public record StartingOrderView(SegmentId segment, int number, DrawMethod method, String seed, int groupMaximum,
		Instant drawnAt, String drawnBy, String reason, List<StartView> starts) {

	public StartingOrderView {
		starts = List.copyOf(starts);
	}

}
