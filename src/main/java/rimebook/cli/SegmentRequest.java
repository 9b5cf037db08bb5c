package rimebook.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.SegmentStanding;

/** The places of a segment from a file of ordinals or marks. */
record SegmentRequest(String file, PlacementRules rules, Optional<SegmentKind> segment,
		Optional<PlacementRules.SharedOrdinals> sharedOrdinals, OutputFormat format) {

	static final String METHOD = "--method";

	static final String SEGMENT = "--segment";

	static final String SHARED_ORDINALS = "--shared-ordinals";

	static final String EQUAL_JUDGES = "--equal-judges";

	static final String EVEN_PANEL = "--even-panel";

	/** Points are read from other files, by {@link PointsRequest}. */
	private static final Map<String, Optional<PlacementRules.PlacementMethod>> METHODS = Map.of("majority",
			Optional.of(PlacementRules.PlacementMethod.MAJORITY), "one-by-one",
			Optional.of(PlacementRules.PlacementMethod.ONE_BY_ONE), PointsRequest.POINTS, Optional.empty());

	/**
	 * The arguments, if there are no options but those that say how places are made.
	 * @param more other options that there are
	 */
	static Arguments checked(Arguments typed, Set<String> more) {
		Set<String> allowed = new HashSet<>(Set.of(METHOD, SEGMENT, SHARED_ORDINALS, EQUAL_JUDGES, EVEN_PANEL));
		allowed.addAll(more);
		return typed.within(allowed, "");
	}

	static SegmentRequest of(Arguments arguments) {
		PlacementRules.PlacementMethod method = arguments.choice(METHOD, METHODS)
			.flatMap(Function.identity())
			.orElseThrow(() -> new UsageException("option '--method' is missing"));
		Optional<SegmentKind> segment = arguments.choice(SEGMENT,
				Map.of("short", SegmentKind.SHORT, "free", SegmentKind.FREE));
		Optional<PlacementRules.SharedOrdinals> shared = arguments.choice(SHARED_ORDINALS, Map.of("skip",
				PlacementRules.SharedOrdinals.BETTER_THEN_SKIP, "mean", PlacementRules.SharedOrdinals.MEAN));
		PlacementRules rules = rules(method, segment.orElse(SegmentKind.FREE), arguments)
			.withSharedOrdinals(shared.orElse(PlacementRules.SharedOrdinals.BETTER_THEN_SKIP));
		return new SegmentRequest(file(arguments), rules, segment, shared, OutputFormat.of(arguments));
	}

	private static PlacementRules rules(PlacementRules.PlacementMethod method, SegmentKind segment,
			Arguments arguments) {
		boolean majority = method == PlacementRules.PlacementMethod.MAJORITY;
		if (majority) {
			arguments.without(Set.of(EQUAL_JUDGES), "'--method majority'");
		}
		PlacementRules rules = majority ? PlacementRules.majority(segment) : PlacementRules.oneByOne(segment);
		return rules
			.withEqualJudgesInFavour(
					arguments
						.choice(EQUAL_JUDGES,
								Map.of("both", PlacementRules.EqualJudgesInFavour.BOTH_WIN, "half",
										PlacementRules.EqualJudgesInFavour.HALF_EACH, "none",
										PlacementRules.EqualJudgesInFavour.NEITHER))
						.orElse(rules.equalJudgesInFavour()))
			.withEvenPanel(
					arguments
						.choice(EVEN_PANEL,
								Map.of("refuse", PlacementRules.EvenPanel.REFUSE, "allow",
										PlacementRules.EvenPanel.ALLOW))
						.orElse(rules.evenPanel()));
	}

	private static String file(Arguments arguments) {
		List<String> files = arguments.rest();
		if (files.size() != 1) {
			throw new UsageException("expected one file; got " + files.size());
		}
		return files.get(0);
	}

	Tabulated run() {
		Placed placed = place();
		return new Tabulated(this.format.write(StandingTables.of(placed.standing())), placed.notes());
	}

	Placed place() {
		return place(SegmentSheet.of(CsvFile.read(this.file), this.rules.evenPanel()));
	}

	private Placed place(SegmentSheet sheet) {
		return sheet.columns().hasMarks() ? fromMarks(sheet) : fromOrdinals(sheet);
	}

	/** Make the standing of a segment under way, in which rows are not yet filled. */
	UnderWay begin() {
		SegmentSheet sheet = SegmentSheet.of(CsvFile.read(this.file), this.rules.evenPanel());
		sheet.checkUnderWay();
		Placed placed = place(sheet.filled());
		if (!sheet.columns().hasMarks()) {
			sheet.filled().checkRankings();
		}
		return new UnderWay(placed.standing(), sheet.unfilled(), placed.notes());
	}

	private Placed fromMarks(SegmentSheet sheet) {
		if (this.segment.isEmpty()) {
			throw new UsageException("'" + this.file + "' has marks, so option '--segment' is needed");
		}
		return new Placed(PlacementTabulation.ofCards(this.rules, sheet.cards()), sheet.columns().notes());
	}

	private Placed fromOrdinals(SegmentSheet sheet) {
		List<String> notes = new ArrayList<>(sheet.columns().notes());
		this.segment.ifPresent((kind) -> notes.add(unused(SEGMENT)));
		this.sharedOrdinals.ifPresent((shared) -> notes.add(unused(SHARED_ORDINALS)));
		SegmentStanding standing = PlacementTabulation.ofOrdinals(this.rules, sheet.ordinals());
		notes.addAll(sheet.incompleteRankings());
		return new Placed(standing, notes);
	}

	private String unused(String option) {
		return this.file + ": the file has ordinals, so option '" + option + "' changes nothing";
	}

	/**
	 * A standing.
	 *
	 * @param standing of the segment
	 * @param notes things left out or doubtful
	 */
	record Placed(SegmentStanding standing, List<String> notes) {

	}

	/**
	 * A segment under way.
	 *
	 * @param standing so far
	 * @param toSkate entries still to skate
	 * @param notes things left out or doubtful
	 */
	record UnderWay(SegmentStanding standing, List<String> toSkate, List<String> notes) {

		/** All entries, those marked first. */
		List<String> entries() {
			return Stream.concat(this.standing.rows().stream().map(PlacedEntry::entry), this.toSkate.stream()).toList();
		}

	}

}
