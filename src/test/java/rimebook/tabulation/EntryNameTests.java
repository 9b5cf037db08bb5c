package rimebook.tabulation;

import java.util.Map;

import org.junit.jupiter.api.Test;

import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class EntryNameTests {

	private static final Map<String, String> NAMES = Map.of("a1", "Icefern", "b2", "entry 'a1'");

	@Test
	void putsANameWhereAnEntryIsSaid() {
		assertThat(named(TabulationException.zeroMark("a1")))
			.isEqualTo("A card of Icefern has a mark of 0.0, which this rule set takes for 'not skated'.");
		assertThat(named(TabulationException.duplicateEntry("a1"))).isEqualTo("Icefern is listed more than once.");
	}

	/** A name is never searched for entries, nor is any other part. */
	@Test
	void looksIntoNoText() {
		assertThat(named(TabulationException.duplicateEntry("b2"))).isEqualTo("entry 'a1' is listed more than once.");
		Sentence text = Sentence.said("entry 'a1'");
		assertThat(EntryName.named(text, NAMES)).isEqualTo(text);
	}

	@Test
	void anEntryWithoutANameKeepsItsIdentifier() {
		assertThat(named(TabulationException.duplicateEntry("c3"))).isEqualTo("Entry 'c3' is listed more than once.");
	}

	/** What is refused may have been put into a longer sentence. */
	@Test
	void looksIntoParts() {
		Sentence whole = Sentence.of("results.cannot-be-tabulated",
				TabulationException.duplicateEntry("a1").sentence());
		assertThat(EntryName.named(whole, NAMES).english())
			.isEqualTo("The standing cannot be made so: Icefern is listed more than once.");
	}

	private static String named(TabulationException refusal) {
		return EntryName.named(refusal.sentence(), NAMES).english();
	}

}
