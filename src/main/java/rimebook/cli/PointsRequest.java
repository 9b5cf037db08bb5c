package rimebook.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.SegmentRules;

/** The standing of a segment under points judging, from files. */
record PointsRequest(PointsFiles files, SegmentRules.TieBreak tieBreak, OutputFormat format, boolean detail) {

	static final String METHOD = "--method";

	static final String POINTS = "points";

	private static final String SEGMENT = "--segment";

	static final String DETAIL = "--detail";

	private static final String BESIDE = " beside '--method points'";

	/** Return whether the method named is this one. */
	static boolean isMeantBy(Arguments typed) {
		return typed.option(METHOD).filter(POINTS::equals).isPresent();
	}

	/**
	 * The arguments, if there are no options but those that name the files and the
	 * segment, and nothing else.
	 * @param more other options that there are
	 */
	static Arguments checked(Arguments typed, Set<String> more) {
		Set<String> allowed = new HashSet<>(PointsFiles.OPTIONS);
		allowed.addAll(Set.of(METHOD, SEGMENT));
		allowed.addAll(more);
		Arguments arguments = typed.within(allowed, BESIDE);
		if (!arguments.rest().isEmpty()) {
			throw new UsageException("'" + arguments.rest().get(0) + "' is one file too many" + BESIDE);
		}
		return arguments;
	}

	static PointsRequest of(Arguments arguments) {
		SegmentRules.TieBreak tieBreak = arguments
			.choice(SEGMENT, Map.of("short", SegmentRules.TieBreak.ELEMENTS, "free", SegmentRules.TieBreak.COMPONENTS))
			.orElse(SegmentRules.TieBreak.NONE);
		return new PointsRequest(PointsFiles.of(arguments), tieBreak, OutputFormat.of(arguments),
				arguments.has(DETAIL));
	}

	Tabulated run() {
		PointsSheets sheets = PointsSheets.read(this.files);
		PointsStanding standing = sheets.standing(this.tieBreak);
		List<String> notes = new ArrayList<>(sheets.notes());
		if (this.tieBreak == SegmentRules.TieBreak.NONE
				&& standing.rows().stream().anyMatch(PointsStanding.ScoredEntry::shared)) {
			notes.add("without option '--segment' equal totals share the place");
		}
		String places = this.format.write(PointsTables.places(standing));
		return new Tabulated(this.detail ? places + "\n" + detail(standing) : places, notes);
	}

	private String detail(PointsStanding standing) {
		return (this.format == OutputFormat.CSV) ? PointsTables.detail(standing).csv()
				: String.join("\n", standing.rows().stream().map(PointsExplanation::working).toList());
	}

}
