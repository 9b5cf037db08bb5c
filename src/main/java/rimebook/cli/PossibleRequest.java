package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.possible.PossiblePlaces;
import rimebook.tabulation.possible.SegmentUnderWay;
import rimebook.tabulation.possible.StillPossible;

/**
 * What is still possible in a segment under placement judging.
 *
 * @param segment the file and how places are made
 * @param earlier the file of the segments before
 * @param rules of the event
 * @param needs for how many places to tell what is needed
 */
record PossibleRequest(SegmentRequest segment, Optional<String> earlier, CombinationRules rules, int needs) {

	static final String EARLIER = "--earlier";

	static final String NEEDS = "--needs";

	private static final Set<String> OF_EVENT = Set.of(CombineRequest.FACTORS, CombineRequest.INCOMPLETE, NEEDS);

	private static final Pattern COUNT = Pattern.compile("\\d{1,3}");

	static PossibleRequest of(Arguments typed) {
		Arguments arguments = SegmentRequest.checked(typed,
				Set.of(OutputFormat.OPTION, EARLIER, CombineRequest.FACTORS, CombineRequest.INCOMPLETE, NEEDS));
		Optional<String> earlier = arguments.option(EARLIER);
		if (earlier.isEmpty()) {
			arguments.without(OF_EVENT, "a segment by itself; option '--earlier' names the segments before");
		}
		return new PossibleRequest(SegmentRequest.of(arguments), earlier, CombineRequest.rules(arguments),
				needs(arguments.option(NEEDS).orElse("3")));
	}

	private static int needs(String text) {
		if (!COUNT.matcher(text).matches()) {
			throw new UsageException("option '--needs' is '" + text + "'; expected a number of places from 0 to 999");
		}
		return Integer.parseInt(text);
	}

	Tabulated run() {
		SegmentRequest.UnderWay begun = this.segment.begin();
		List<String> notes = new ArrayList<>(begun.notes());
		SegmentUnderWay underWay = SegmentUnderWay.of(this.segment.rules(), begun.standing(), begun.toSkate());
		if (this.earlier.isPresent()) {
			PlacesSheet sheet = PlacesSheet.ofEarlier(CsvFile.read(this.earlier.get()), this.rules.factors().size());
			sheet.checkAllListed(begun.entries(), this.segment.file());
			notes.addAll(sheet.notes());
			underWay = underWay.after(new SegmentUnderWay.EarlierSegments(this.rules, sheet.entries()));
		}
		return new Tabulated(text(StillPossible.of(underWay), begun), notes);
	}

	private String text(PossiblePlaces possible, SegmentRequest.UnderWay begun) {
		OutputFormat format = this.segment.format();
		String places = format.write(PossibleTables.places(possible, begun));
		return (this.earlier.isEmpty() || this.needs == 0) ? places
				: places + "\n" + format.write(PossibleTables.needs(possible, this.needs));
	}

}
