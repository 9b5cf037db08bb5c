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
		List<EntryOrdinals> free = List.of(ordinals("D", 1), ordinals("A", 2), ordinals("C", 3));
		PossiblePlaces said = StillPossible
			.of(underWay(free, "B").after(new SegmentUnderWay.EarlierSegments(CombinationRules.ofFactors(50, 100), List
				.of(EntryPlaces.of("A", 1), EntryPlaces.of("B", 2), EntryPlaces.of("C", 3), EntryPlaces.of("D", 4)))));
		assertThat(said.teams()).extracting((team) -> PossibleWords.inEvent(team, (name) -> name).english())
			.containsExactly("D can still finish 1st to 3rd in the event.",
					"A can still finish 1st to 3rd in the event.", "C can still finish 3rd or 4th in the event.",
					"B can still finish 1st to 4th in the event.");
		assertThat(said.teams()).extracting((team) -> PossibleWords.inSegment(team, (name) -> name).english())
			.containsExactly("D can still finish 1st or 2nd in this segment.",
					"A can still finish 2nd or 3rd in this segment.", "C can still finish 3rd or 4th in this segment.",
					"B can still finish 1st to 4th in this segment.");
		assertThat(said.needs()).extracting((need) -> PossibleWords.need(need, true, (name) -> name).english())
			.containsExactly("To win the event, B needs 1st place in this segment.",
					"For 2nd place or better in the event, B needs 2nd place alone or better in this segment.",
					"For 3rd place or better in the event, B needs 3rd place or better in this segment.",
					"B is certain of 4th place or better in the event.");
	}

	/** Twentieth before, B cannot win any more, whatever the judges do. */
	@Test
	void aNeedIsFoundByTeamAndPlace() {
		List<EntryOrdinals> free = List.of(ordinals("D", 1), ordinals("A", 2));
		PossiblePlaces said = StillPossible
			.of(underWay(free, "B").after(new SegmentUnderWay.EarlierSegments(CombinationRules.ofFactors(50, 100),
					List.of(EntryPlaces.of("A", 1), EntryPlaces.of("B", 20), EntryPlaces.of("D", 2)))));
		assertThat(said.need("B", 1)).get().matches(PossiblePlaces.PlaceNeed::isLost).matches((need) -> !need.isSafe());
		assertThat(said.need("B", 3)).get()
			.matches((need) -> !need.isLost())
			.matches(PossiblePlaces.PlaceNeed::isSafe)
			.extracting(PossiblePlaces.PlaceNeed::place)
			.isEqualTo(3);
		assertThat(said.need("B", 4)).isEmpty();
		assertThat(said.need("A", 1)).isEmpty();
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
			.containsOnly(new PossiblePlaces.PlaceRange(1, true, 3, true));
		assertThat(said.needs()).isEmpty();
		assertThat(StillPossible.of(underWay(List.of(), "A")).team("A").orElseThrow().segment())
			.isEqualTo(new PossiblePlaces.PlaceRange(1, true, 1, true));
	}

	@Test
	void twoPerfectCardsCannotBeBeaten() {
		EntryCards perfect = EntryCards.skated("A", Collections.nCopies(3, new CardMarks(600, 600)));
		PossiblePlaces said = StillPossible
			.of(SegmentUnderWay.of(MAJORITY, PlacementTabulation.ofCards(MAJORITY, List.of(perfect)), List.of("B")));
		assertThat(said.team("A").orElseThrow().segment()).isEqualTo(new PossiblePlaces.PlaceRange(1, true, 1, true));
		assertThat(said.team("B").orElseThrow().segment()).isEqualTo(new PossiblePlaces.PlaceRange(1, true, 2, true));
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

	private static SegmentUnderWay.EarlierSegments earlier(EntryPlaces... places) {
		return new SegmentUnderWay.EarlierSegments(CombinationRules.ofFactors(50, 100), List.of(places));
	}

	private static void assertRefused(String code, Runnable action) {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(action::run)
			.withMessageEndingWith(".")
			.extracting(TabulationException::code)
			.isEqualTo(code);
	}

}
