package rimebook.review;

import java.util.List;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;

/**
 * How the panel of an event agrees.
 *
 * @param segments those with a published standing, in their order
 * @param together all of them taken together; empty where there are not two
 */
public record EventReview(CompetitionView competition, EventView event, List<SegmentReview> segments,
		List<AspectReview> together) {

	public EventReview {
		segments = List.copyOf(segments);
		together = List.copyOf(together);
	}

	/** Tell whether every segment looked at is signed. */
	public boolean isOfficial() {
		return this.segments.stream().allMatch(SegmentReview::official);
	}

}
