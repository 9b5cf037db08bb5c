package rimebook.tabulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The world championships of 1998 once more, team after team in the order skated. The
 * data set is not part of this repository: where the property {@code rimebook.reference}
 * does not lead to it, the test says so and checks nothing. The expected numbers were
 * counted by an independent script.
 */
class ReferenceFlipsTests {

	private static final Path FOLDER = Path.of(System.getProperty("rimebook.reference", "reference"), "placement",
			"not-to-be-committed");

	private final Map<String, Integer> counts = new TreeMap<>();

	@Test
	void everyReversalIsFoundAndExplained() throws IOException {
		if (!Files.isDirectory(FOLDER)) {
			System.out.println("REFERENCE FLIPS ABSENT: " + FOLDER + " not found, no segment was replayed");
			return;
		}
		try (Stream<Path> files = Files.list(FOLDER)) {
			files.filter((file) -> file.toString().endsWith(".csv")).sorted().forEach(this::replay);
		}
		System.out.println("REFERENCE FLIPS: " + this.counts);
		assertThat(this.counts).isEqualTo(Map.of("segments", 14, "majority reversals", 39,
				"majority ties made or parted", 5, "one by one reversals", 11, "one by one ties made or parted", 14));
	}

	private void replay(Path file) {
		SheetFixtures sheet = SheetFixtures.sheet(file);
		List<EntryOrdinals> order = IntStream.range(0, sheet.rows().size())
			.boxed()
			.filter((row) -> !sheet.rows().get(row).get("start_order").isEmpty())
			.sorted(Comparator.comparing((row) -> Integer.valueOf(sheet.rows().get(row).get("start_order"))))
			.map(sheet.ordinals()::get)
			.toList();
		if (order.size() == sheet.rows().size()) {
			replay("majority", PlacementRules.majority(SegmentKind.FREE), order);
			replay("one by one", PlacementRules.oneByOne(SegmentKind.FREE), order);
			this.counts.merge("segments", 1, Integer::sum);
		}
	}

	private void replay(String method, PlacementRules rules, List<EntryOrdinals> order) {
		List<EntryCards> cards = new ArrayList<>();
		SegmentStanding before = PlacementTabulation.ofCards(rules, cards);
		for (EntryOrdinals next : order) {
			cards.add(ReferenceResultsTests.cards(next));
			SegmentStanding after = PlacementTabulation.ofCards(rules, cards);
			for (Flip flip : Flip.between(before, after)) {
				assertThat(flip.newcomers()).containsExactly(next.entry());
				assertThat(flip.words((name) -> name).english()).startsWith(flip.after().ahead().entry()).endsWith(".");
				this.counts.merge(method + (flip.isReversal() ? " reversals" : " ties made or parted"), 1,
						Integer::sum);
			}
			before = after;
		}
	}

}
