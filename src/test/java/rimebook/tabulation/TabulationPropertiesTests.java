package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;

/** What holds for every panel, tried on generated ones; a seed makes each repeatable. */
class TabulationPropertiesTests {

	private static final int PANELS = 400;

	private final RandomPanels panels = new RandomPanels(new Random(20_000_407));

	@ParameterizedTest
	@EnumSource(PlacementRules.SharedOrdinals.class)
	void handProcedureAndSortingKeyAgree(PlacementRules.SharedOrdinals shared) {
		PlacementRules rules = PlacementRules.majority(SegmentKind.FREE)
			.withSharedOrdinals(shared)
			.withEvenPanel(PlacementRules.EvenPanel.ALLOW);
		for (int i = 0; i < 10_000; i++) {
			SegmentStanding standing = PlacementTabulation.ofCards(rules, this.panels.next(12, 1 + i % 9));
			assertThat(SheetFixtures.places(standing)).isEqualTo(HandProcedure.places(standing));
		}
	}

	@ParameterizedTest
	@EnumSource(PlacementRules.PlacementMethod.class)
	void orderOfEntriesIsIrrelevant(PlacementRules.PlacementMethod method) {
		forEachPanel((entries) -> {
			List<EntryCards> shuffled = this.panels.shuffled(entries);
			assertThat(tabulate(method, shuffled)).isEqualTo(tabulate(method, entries));
		});
	}

	@ParameterizedTest
	@EnumSource(PlacementRules.PlacementMethod.class)
	void orderOfJudgesIsIrrelevant(PlacementRules.PlacementMethod method) {
		forEachPanel((entries) -> {
			List<Integer> seats = this.panels
				.shuffled(IntStream.range(0, entries.get(0).cards().size()).boxed().toList());
			List<EntryCards> reseated = entries.stream()
				.map((entry) -> EntryCards.skated(entry.entry(), seats.stream().map(entry.cards()::get).toList()))
				.toList();
			assertThat(sentences(tabulate(method, reseated))).isEqualTo(sentences(tabulate(method, entries)));
		});
	}

	@ParameterizedTest
	@EnumSource(PlacementRules.PlacementMethod.class)
	void replayingCardByCardEndsInTheSameBytes(PlacementRules.PlacementMethod method) {
		forEachPanel((entries) -> {
			List<EntryCards> soFar = new ArrayList<>();
			String last = "";
			for (EntryCards entry : this.panels.shuffled(entries)) {
				soFar.add(this.panels.index(soFar.size() + 1), entry);
				last = tabulate(method, soFar).toString();
			}
			assertThat(last).isEqualTo(tabulate(method, entries).toString());
		});
	}

	@Test
	void teamPlacedFirstByAMajorityIsFirst() {
		int[] found = new int[1];
		forEachPanel((entries) -> {
			SegmentStanding standing = tabulate(PlacementRules.PlacementMethod.MAJORITY, entries);
			List<PlacedEntry> firsts = standing.rows()
				.stream()
				.filter(TabulationPropertiesTests::isFirstOfMost)
				.toList();
			if (firsts.size() == 1) {
				assertThat(firsts.get(0).place()).isEqualTo(1);
				assertThat(firsts.get(0).shared()).isFalse();
				found[0]++;
			}
			assertThat(firsts).allSatisfy((row) -> assertThat(row.place()).isLessThanOrEqualTo(firsts.size()));
		});
		assertThat(found[0]).isGreaterThan(PANELS / 4);
	}

	private static boolean isFirstOfMost(PlacedEntry row) {
		return Collections.frequency(row.ordinals(), 100) > row.ordinals().size() / 2;
	}

	@ParameterizedTest
	@EnumSource(PlacementRules.PlacementMethod.class)
	void teamPutFirstByEveryJudgeAloneIsFirst(PlacementRules.PlacementMethod method) {
		forEachPanel((entries) -> {
			List<EntryCards> all = new ArrayList<>(entries);
			all.add(EntryCards.skated("zz",
					entries.get(0).cards().stream().map((card) -> new CardMarks(600, 600)).toList()));
			PlacedEntry first = tabulate(method, all).rows().get(0);
			assertThat(first.entry()).isEqualTo("zz");
			assertThat(first.shared()).isFalse();
		});
	}

	@ParameterizedTest
	@EnumSource(PlacementRules.PlacementMethod.class)
	void withdrawnTeamChangesNothingForTheOthers(PlacementRules.PlacementMethod method) {
		forEachPanel((entries) -> {
			List<EntryCards> all = new ArrayList<>(entries);
			all.add(this.panels.index(all.size()), EntryCards.without("W", EntryStatus.WITHDRAWN));
			SegmentStanding with = tabulate(method, all);
			assertThat(with.rows().subList(0, entries.size())).isEqualTo(tabulate(method, entries).rows());
			assertThat(with.rows()).hasSize(all.size());
		});
	}

	@ParameterizedTest
	@EnumSource(PlacementRules.PlacementMethod.class)
	void placesCountTheTeamsAhead(PlacementRules.PlacementMethod method) {
		forEachPanel((entries) -> {
			List<PlacedEntry> rows = tabulate(method, entries).rows();
			for (PlacedEntry row : rows) {
				assertThat(row.place())
					.isEqualTo(1 + (int) rows.stream().filter((other) -> isAhead(other, row)).count());
				assertThat(row.shared())
					.isEqualTo(Collections.frequency(rows.stream().map(PlacedEntry::place).toList(), row.place()) > 1);
			}
		});
	}

	private static boolean isAhead(PlacedEntry one, PlacedEntry other) {
		return one.place() != null && other.place() != null && one.place() < other.place();
	}

	@Test
	void judgesInFavourOfAPairAddUpToThePanelAndItsLevelCards() {
		PlacementRules rules = PlacementRules.oneByOne(SegmentKind.FREE);
		forEachPanel((entries) -> {
			SegmentStanding standing = PlacementTabulation.ofCards(rules, entries);
			OneByOneTable table = OneByOneTable.of(rules, standing);
			PlacedEntry one = standing.rows().get(0);
			PlacedEntry other = standing.rows().get(standing.rows().size() - 1);
			int level = (int) IntStream.range(0, standing.judges())
				.filter((judge) -> one.ordinals().get(judge).equals(other.ordinals().get(judge)))
				.count();
			assertThat(table.cell(one.entry(), other.entry()).judgesInFavour()
					+ table.cell(other.entry(), one.entry()).judgesInFavour())
				.isEqualTo(standing.judges() + level);
		});
	}

	private void forEachPanel(java.util.function.Consumer<List<EntryCards>> property) {
		for (int i = 0; i < PANELS; i++) {
			property.accept(this.panels.next(10, 1 + 2 * (i % 5)));
		}
	}

	private static SegmentStanding tabulate(PlacementRules.PlacementMethod method, List<EntryCards> entries) {
		Function<SegmentKind, PlacementRules> rules = (method == PlacementRules.PlacementMethod.MAJORITY)
				? PlacementRules::majority : PlacementRules::oneByOne;
		return PlacementTabulation.ofCards(rules.apply(SegmentKind.FREE), entries);
	}

	private static List<String> sentences(SegmentStanding standing) {
		return standing.rows().stream().map((row) -> row.entry() + " " + row.why() + row.figures()).toList();
	}

}
