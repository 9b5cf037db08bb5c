package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import rimebook.tabulation.PlacePair;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementWorking;
import rimebook.tabulation.Reason;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.TabulationException;

/** Explains places of placement judging. */
final class PlacementExplanation {

	private PlacementExplanation() {
	}

	static Tabulated of(Arguments typed) {
		Arguments arguments = SegmentRequest.checked(typed, ExplainedEntries.OPTIONS);
		ExplainedEntries asked = ExplainedEntries.of(arguments);
		SegmentRequest request = SegmentRequest.of(arguments);
		SegmentRequest.Placed placed = request.place();
		SegmentStanding standing = placed.standing();
		List<String> blocks = new ArrayList<>();
		asked.against().ifPresent((other) -> blocks.add(chain(standing, asked.entry(), other)));
		asked.all().forEach((entry) -> blocks.add(working(request, standing, entry)));
		if (asked.against().isEmpty()) {
			neighbours(standing, asked.entry()).forEach((rival) -> blocks.add(chain(standing, asked.entry(), rival)));
		}
		return new Tabulated(String.join("\n", blocks), placed.notes());
	}

	private static PlacedEntry row(SegmentStanding standing, String entry) {
		return standing.row(entry).orElseThrow(() -> TabulationException.unknownEntry(entry));
	}

	private static String working(SegmentRequest request, SegmentStanding standing, String entry) {
		return entry + "\n" + row(standing, entry).why().english() + "\n"
				+ String.join("\n", PlacementWorking.of(request.rules(), standing, entry)) + "\n";
	}

	/** Those on the same place, then on the next better and the next worse one. */
	private static List<String> neighbours(SegmentStanding standing, String entry) {
		Reason reason = row(standing, entry).reason();
		return Stream
			.concat(reason.sharedWith().stream(),
					Stream.of(reason.better(), reason.worse())
						.flatMap((comparison) -> (comparison == null) ? Stream.of() : comparison.rivals().stream()))
			.toList();
	}

	private static String chain(SegmentStanding standing, String one, String other) {
		return PlacePair.of(standing, one, other).words(UnaryOperator.identity()).english() + "\n";
	}

}
