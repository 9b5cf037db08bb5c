package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class AdvancementTests {

	private static final PlacementRules RULES = PlacementRules.majority(SegmentKind.FREE);

	/**
	 * World Championships to 2004: two qualifying groups, the best 15 of each go on to
	 * the short programme (goldenskate.com, thread 4810, March 2004).
	 */
	@Test
	void theBestOfTwoGroupsAdvance() {
		Advancement advancement = of(AdvancementRules.best(15), group("A", 18), group("B", 17));
		assertThat(advancement.advancing()).hasSize(30).startsWith("A1", "B1", "A2", "B2").endsWith("A15", "B15");
		assertThat(advancement.behind()).containsExactly(behind("A16", 31, true), behind("B16", 31, true),
				behind("A17", 33, true), behind("B17", 33, true), behind("A18", 35, false));
	}

	/**
	 * The best 24 after the short programme go on to the free skating (data of the World
	 * Championships of 1998).
	 */
	@Test
	void theBestOfOneGroupAdvance() {
		Advancement advancement = of(AdvancementRules.best(24), group("A", 30));
		assertThat(advancement.advancing()).hasSize(24).doesNotContain("A25");
		assertThat(advancement.behind()).extracting(Advancement.Behind::place).containsExactly(25, 26, 27, 28, 29, 30);
	}

	@Test
	void everybodyAdvancesWhereThereAreNoMoreThanThat() {
		assertThat(of(AdvancementRules.best(5), group("A", 5)).behind()).isEmpty();
		assertThat(of(AdvancementRules.best(5)).advancing()).isEmpty();
	}

	/** All tied advance (Grand Prix and Olympic team rules, ifsmagazines.com, 2018). */
	@ParameterizedTest
	@CsvSource({ "ALL_ADVANCE, A B C, 4 D", "NONE_ADVANCES, A, 2 B 2 C 4 D" })
	void aTieForTheLastPlaceGoesByTheRules(AdvancementRules.LastPlaceTies ties, String advancing, String behind) {
		Advancement advancement = of(AdvancementRules.best(2).withTies(ties), standing(EntryOrdinals.of("A", 1),
				EntryOrdinals.of("B", 2), EntryOrdinals.of("C", 2), EntryOrdinals.of("D", 4)));
		assertThat(String.join(" ", advancement.advancing())).isEqualTo(advancing);
		assertThat(String.join(" ",
				advancement.behind().stream().map((team) -> team.place() + " " + team.entry()).toList()))
			.isEqualTo(behind);
	}

	@ParameterizedTest
	@CsvSource({ "ALL_ADVANCE", "NONE_ADVANCES" })
	void aTieThatFitsAdvancesWhateverTheRules(AdvancementRules.LastPlaceTies ties) {
		assertThat(of(AdvancementRules.best(2).withTies(ties),
				standing(EntryOrdinals.of("A", 1), EntryOrdinals.of("B", 1), EntryOrdinals.of("C", 3)))
			.advancing()).containsExactly("A", "B");
	}

	/**
	 * 1997 Worlds, men: the winner of the short programme withdrew, and the free skating
	 * still had 24 starters (tables at iceskatingintnl.com); in 2014 organisers refused
	 * that (fsuniverse.net, thread 111399).
	 */
	@ParameterizedTest
	@CsvSource({ "FILL, 24, A25", "LEAVE, 23, A24" })
	void aVacancyGoesByTheRules(AdvancementRules.Vacancies vacancies, int starters, String last) {
		Advancement advancement = Advancement.of(AdvancementRules.best(24).withVacancies(vacancies),
				List.of(group("A", 30)), Set.of("A1"));
		assertThat(advancement.advancing()).hasSize(starters).doesNotContain("A1").endsWith(last);
		assertThat(advancement.behind().get(0).place()).isEqualTo(starters + 1);
		assertThat(advancement.behind()).extracting(Advancement.Behind::entry).doesNotContain("A1");
	}

	@Test
	void teamsWithoutAPlaceNeitherAdvanceNorFollow() {
		SegmentStanding group = PlacementTabulation.ofCards(RULES,
				List.of(EntryCards.skated("A", List.of(new CardMarks(500, 500))),
						EntryCards.without("W", EntryStatus.WITHDRAWN)));
		assertThat(of(AdvancementRules.best(2), group)).isEqualTo(new Advancement(List.of("A"), List.of()));
	}

	/**
	 * Qualifying round, short programme and free skating with 0.4, 0.6 and 1.0: a place
	 * counts inside its own group (World Championships of 1999, tables at
	 * iceskatingintnl.com). B wins, though 2nd in its group.
	 */
	@Test
	void groupPlacesOfARoundWithAFactorAreCombinedAsThoseOfASegment() {
		EventStanding event = Combination.combine(CombinationRules.ofFactors(40, 60, 100),
				List.of(EntryPlaces.of("A", 1, 2, 2), EntryPlaces.of("B", 2, 1, 1), EntryPlaces.of("C", 1, 3, null),
						EntryPlaces.of("D", 3, null, null), EntryPlaces.of("E", 3, null, null)));
		assertThat(SheetFixtures.places(event)).containsExactly("1 B", "2 A", "3 C", "4 D", "4 E");
	}

	@Test
	void badInputIsRefused() {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(() -> AdvancementRules.best(0))
			.extracting(TabulationException::code)
			.isEqualTo("advancing-out-of-range");
		assertThatExceptionOfType(TabulationException.class)
			.isThrownBy(() -> of(AdvancementRules.best(1), group("A", 2), group("A", 1)))
			.extracting(TabulationException::code)
			.isEqualTo("duplicate-entry");
	}

	private static Advancement of(AdvancementRules rules, SegmentStanding... groups) {
		return Advancement.of(rules, List.of(groups), Set.of());
	}

	private static SegmentStanding group(String name, int teams) {
		List<EntryOrdinals> ordinals = new ArrayList<>();
		for (int place = 1; place <= teams; place++) {
			ordinals.add(EntryOrdinals.of(name + place, place));
		}
		return standing(ordinals.toArray(EntryOrdinals[]::new));
	}

	private static SegmentStanding standing(EntryOrdinals... ordinals) {
		return PlacementTabulation.ofOrdinals(RULES, List.of(ordinals));
	}

	private static Advancement.Behind behind(String entry, int place, boolean shared) {
		return new Advancement.Behind(entry, place, shared);
	}

}
