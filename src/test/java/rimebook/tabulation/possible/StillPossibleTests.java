package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryOrdinals;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.TabulationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class StillPossibleTests {

	private static final PlacementRules MAJORITY = PlacementRules.majority(SegmentKind.FREE);

	/** 2002 Olympics, ladies: places in the short programme and the order of the free. */
	@Test
	void whatTheLastToSkateNeededIsTold() {
		List<EntryOrdinals> free = List.of(ordinals("Hughes", 1), ordinals("Kwan", 2), ordinals("Cohen", 3));
		PossiblePlaces said = StillPossible.of(underWay(free, "Slutskaya")
			.after(new EarlierSegments(CombinationRules.ofFactors(50, 100), List.of(EntryPlaces.of("Kwan", 1),
					EntryPlaces.of("Slutskaya", 2), EntryPlaces.of("Cohen", 3), EntryPlaces.of("Hughes", 4)))));
		assertThat(said.teams()).extracting((team) -> PossibleWords.inEvent(team, (name) -> name))
			.containsExactly("Hughes can still finish 1st to 3rd.", "Kwan can still finish 1st to 3rd.",
					"Cohen can still finish 3rd or 4th.", "Slutskaya can still finish 1st to 4th.");
		assertThat(said.teams()).extracting((team) -> PossibleWords.inSegment(team, (name) -> name))
			.containsExactly("Hughes can still finish 1st or 2nd in this segment.",
					"Kwan can still finish 2nd or 3rd in this segment.",
					"Cohen can still finish 3rd or 4th in this segment.",
					"Slutskaya can still finish 1st to 4th in this segment.");
		assertThat(said.needs()).extracting((need) -> PossibleWords.need(need, (name) -> name))
			.containsExactly("To win, Slutskaya needs 1st place in this segment.",
					"For 2nd place or better, Slutskaya needs 2nd place alone or better in this segment.",
					"For 3rd place or better, Slutskaya needs 3rd place or better in this segment.",
					"Slutskaya is certain of 4th place or better.");
	}

	private static EntryOrdinals ordinals(String entry, int place) {
		return EntryOrdinals.of(entry, place, place, place);
	}

	private static SegmentUnderWay underWay(List<EntryOrdinals> marked, String... toSkate) {
		return SegmentUnderWay.of(MAJORITY, PlacementTabulation.ofOrdinals(MAJORITY, marked), List.of(toSkate));
	}

	@Test
	void beforeAnybodyIsMarkedEverythingIsPossible() {
		PossiblePlaces said = StillPossible.of(underWay(List.of(), "A", "B", "C"));
		assertThat(said.teams()).extracting(PossiblePlaces.Outlook::segment)
			.containsOnly(new PlaceRange(1, true, 3, true));
		assertThat(said.needs()).isEmpty();
		assertThat(StillPossible.of(underWay(List.of(), "A")).team("A").orElseThrow().segment())
			.isEqualTo(new PlaceRange(1, true, 1, true));
	}

	@Test
	void twoPerfectCardsCannotBeBeaten() {
		EntryCards perfect = EntryCards.skated("A", Collections.nCopies(3, new CardMarks(600, 600)));
		PossiblePlaces said = StillPossible
			.of(SegmentUnderWay.of(MAJORITY, PlacementTabulation.ofCards(MAJORITY, List.of(perfect)), List.of("B")));
		assertThat(said.team("A").orElseThrow().segment()).isEqualTo(new PlaceRange(1, true, 1, true));
		assertThat(said.team("B").orElseThrow().segment()).isEqualTo(new PlaceRange(1, true, 2, true));
		assertThat(said.team("C")).isEmpty();
	}

	@Test
	void badInputIsRefusedByName() {
		List<EntryOrdinals> one = List.of(ordinals("A", 1));
		assertRefused("nobody-to-skate", () -> underWay(one));
		assertRefused("duplicate-entry", () -> underWay(one, "A"));
		assertRefused("duplicate-entry", () -> underWay(one, "B", "B"));
		assertRefused("entry-missing", () -> underWay(one, " "));
		assertRefused("incomplete-ranking", () -> StillPossible.of(underWay(List.of(ordinals("A", 2)), "B")));
		assertRefused("uneven-places", () -> earlier(EntryPlaces.of("A", 1, 2)));
		assertRefused("duplicate-entry", () -> earlier(EntryPlaces.of("A", 1), EntryPlaces.of("A", 2)));
		assertRefused("earlier-places-missing", () -> underWay(one, "B").after(earlier(EntryPlaces.of("A", 1))));
		List<EntryOrdinals> many = new ArrayList<>();
		for (int i = 1; i <= SegmentUnderWay.MOST_TEAMS; i++) {
			many.add(ordinals("T" + i, i));
		}
		assertRefused("too-many-teams", () -> underWay(many, "B"));
	}

	private static EarlierSegments earlier(EntryPlaces... places) {
		return new EarlierSegments(CombinationRules.ofFactors(50, 100), List.of(places));
	}

	private static void assertRefused(String code, Runnable action) {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(action::run)
			.withMessageEndingWith(".")
			.extracting(TabulationException::code)
			.isEqualTo(code);
	}

}
