package rimebook.stand.web;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.pages.RinkClock;
import rimebook.points.DeductionNotes;
import rimebook.stand.DeductionRow;
import rimebook.tabulation.points.PointsRules;

/**
 * The deductions of the performance on the ice, in points judging.
 *
 * @param sequence the version of the list, 0 before the first
 * @param late whether the technical controller is to look at them, since they were
 * changed after the list of elements was authorised
 */
record DeductionsPart(String performance, int sequence, List<DeductionRow> rows, boolean late) implements LivePart {

	static final DeductionsPart NONE = new DeductionsPart("", 0, List.of(), false);

	static DeductionsPart of(String performance, DeductionNotes.@Nullable DeductionListView list, PointsRules rules,
			RinkClock rink, boolean late) {
		return (list == null) ? new DeductionsPart(performance, 0, List.of(), late)
				: new DeductionsPart(performance, list.sequence(),
						list.deductions().stream().map((noted) -> DeductionRow.of(noted, rules, rink)).toList(), late);
	}

}
