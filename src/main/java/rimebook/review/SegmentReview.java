package rimebook.review;

import java.util.List;

/**
 * How a panel agrees in one segment.
 *
 * @param name what it was called in that version
 * @param version the version of the standing whose marks they are
 * @param official whether that version is signed; other marks may still change
 * @param skated how many teams have marks
 * @param aspects empty in a way of judging whose cards cannot be compared
 */
public record SegmentReview(String name, int version, boolean official, int skated, List<AspectReview> aspects) {

	public SegmentReview {
		aspects = List.copyOf(aspects);
	}

}
