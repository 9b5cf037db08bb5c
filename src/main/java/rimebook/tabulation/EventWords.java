package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;

/** Words of the combination of segments. */
record EventWords(EventStanding.EventRow row) implements Reason.ReasonWords {

	@Override
	public String own(Reason reason) {
		List<String> segments = new ArrayList<>();
		for (int i = 0; i < this.row.places().size(); i++) {
			segments.add(segment(i));
		}
		String total = Hundredths.decimal(this.row.total()) + " (" + String.join(", ", segments) + ")";
		return this.row.complete() ? "total " + total : "so far " + total;
	}

	private String segment(int index) {
		Integer place = this.row.places().get(index);
		Integer factored = this.row.factored().get(index);
		String segment = " in segment " + (index + 1);
		return (place == null || factored == null) ? "no place" + segment
				: English.ordinal(place) + segment + " counts " + Hundredths.decimal(factored);
	}

	@Override
	public String rivals(Reason.Comparison comparison) {
		int theirs = comparison.theirs();
		return switch (comparison.criterion()) {
			case EVERY_SEGMENT -> (theirs == 1) ? "with a place in every segment" : "without a place in every segment";
			case FACTORED_TOTAL -> "with " + Hundredths.decimal(theirs);
			case LAST_SEGMENT_PLACE -> "with the same total but " + English.ordinal(theirs) + " in the last segment";
			case SEGMENT_REACHED -> "whose last segment was segment " + theirs;
			case PLACE_IN_SEGMENT_REACHED -> "who were " + English.ordinal(theirs) + " in the last segment of both";
			case SEGMENTS_SKATED -> "with a place in " + English.count(theirs, "segment");
			default -> "with " + Hundredths.decimal(theirs) + " so far";
		};
	}

}
