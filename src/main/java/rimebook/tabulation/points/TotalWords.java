package rimebook.tabulation.points;

import java.util.stream.Collectors;
import java.util.stream.Stream;

import rimebook.tabulation.English;
import rimebook.tabulation.Reason;

/** The words of an event under points judging. */
record TotalWords(PointsEventStanding.PointsEventRow row) implements Reason.ReasonWords {

	@Override
	public String own(Reason reason) {
		String parts = this.row.segments()
			.stream()
			.flatMap(Stream::ofNullable)
			.map((segment) -> segment.total().toString())
			.collect(Collectors.joining(" + "));
		return this.row.total() + " points" + (this.row.complete() ? "" : " so far")
				+ (parts.contains("+") ? " (" + parts + ")" : "");
	}

	@Override
	public String rivals(Reason.Comparison comparison) {
		int theirs = comparison.theirs();
		return switch (comparison.criterion()) {
			case EVERY_SEGMENT -> (theirs == 1) ? "who skated every segment" : "who did not skate every segment";
			case TOTAL_POINTS -> ScoreWords.difference(comparison);
			case LAST_SEGMENT_POINTS -> ScoreWords.sameTotal(comparison) + " in the last segment";
			case LAST_SEGMENT_PLACE -> "who had the same total but were " + English.ordinal(theirs) + " in the segment";
			case SEGMENT_REACHED -> "whose last segment was segment " + theirs;
			default -> "who were " + English.ordinal(theirs) + " in the last segment of both";
		};
	}

}
