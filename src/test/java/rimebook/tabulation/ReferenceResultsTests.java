package rimebook.tabulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * All segments of the 1998 Worlds with their published places. The data set is not part
 * of this repository: where the property {@code rimebook.reference} does not lead to it,
 * the test says so and checks nothing.
 */
class ReferenceResultsTests {

	private static final Path FOLDER = Path.of(System.getProperty("rimebook.reference", "reference"), "placement",
			"not-to-be-committed");

	@Test
	void everyPublishedSegmentPlaceIsReproduced() throws IOException {
		if (!Files.isDirectory(FOLDER)) {
			System.out.println("REFERENCE RESULTS ABSENT: " + FOLDER + " not found, no published segment was checked");
			return;
		}
		List<Path> files = files();
		int places = files.stream().mapToInt(ReferenceResultsTests::checkedPlaces).sum();
		System.out.println("REFERENCE RESULTS: " + files.size() + " segments, " + places
				+ " published places agree, each from ordinals and from marks with either sharing of ordinals");
		assertThat(files).hasSize(14);
		assertThat(places).isEqualTo(262);
	}

	private static List<Path> files() throws IOException {
		try (Stream<Path> files = Files.list(FOLDER)) {
			return files.filter((file) -> file.toString().endsWith(".csv")).sorted().toList();
		}
	}

	private static int checkedPlaces(Path file) {
		SheetFixtures sheet = SheetFixtures.sheet(file);
		PlacementRules rules = PlacementRules.majority(SegmentKind.FREE);
		List<EntryOrdinals> ordinals = sheet.ordinals();
		SegmentStanding standing = PlacementTabulation.ofOrdinals(rules, ordinals);
		List<EntryCards> cards = ordinals.stream().map(ReferenceResultsTests::cards).toList();
		SegmentStanding fromCards = PlacementTabulation.ofCards(rules, cards);
		assertThat(fromCards.rows()).extracting(PlacedEntry::ordinals)
			.isEqualTo(standing.rows().stream().map(PlacedEntry::ordinals).toList());
		assertThat(HandProcedure.places(standing)).isEqualTo(SheetFixtures.places(standing));
		List<String> published = sheet.places("published_place");
		if (!published.isEmpty()) {
			SegmentStanding byMeans = PlacementTabulation
				.ofCards(rules.withSharedOrdinals(PlacementRules.SharedOrdinals.MEAN), cards);
			assertThat(Stream.of(standing, fromCards, byMeans)).as(file.getFileName().toString())
				.allSatisfy((made) -> assertThat(SheetFixtures.places(made)).isEqualTo(published));
		}
		return published.size();
	}

	/** Marks that give exactly these ordinals: lower by 0.1 for each place. */
	static EntryCards cards(EntryOrdinals entry) {
		return EntryCards.skated(entry.entry(),
				IntStream.range(0, entry.ordinals().size())
					.mapToObj((judge) -> new CardMarks(600 - 10 * entry.ordinals().get(judge), 0))
					.toList());
	}

}
