package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Combination;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EventStanding;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentStanding;

import static org.assertj.core.api.Assertions.assertThat;

/** One way in which a situation ends, tabulated with the cards that it takes. */
final class Outcome {

	private final SegmentStanding segment;

	private final EventStanding event;

	Outcome(RandomSituation situation, Random random) {
		List<EntryCards> cards = new ArrayList<>(situation.entries());
		int mood = random.nextInt(61);
		situation.toSkate().forEach((entry) -> cards.add(EntryCards.skated(entry, cards(situation, random, mood))));
		this.segment = PlacementTabulation.ofCards(situation.rules(), cards);
		this.event = Combination.combine(situation.earlier().rules(),
				situation.earlier().places().stream().map(this::withLastPlace).toList());
	}

	private static List<CardMarks> cards(RandomSituation situation, Random random, int mood) {
		return IntStream.range(0, situation.judges())
			.mapToObj((judge) -> new CardMarks(mark(random, mood),
					(situation.rules().marksPerCard() == PlacementRules.MarksPerCard.ONE) ? 0 : mark(random, mood)))
			.toList();
	}

	private static int mark(Random random, int mood) {
		return 10 * Math.max(1, Math.min(60, mood + random.nextInt(9) - 4));
	}

	private EntryPlaces withLastPlace(EntryPlaces earlier) {
		List<@Nullable Integer> places = new ArrayList<>(earlier.places());
		places.add(this.segment.occupiedPlace(earlier.entry()).orElse(null));
		return new EntryPlaces(earlier.entry(), earlier.status(), places);
	}

	void check(PossiblePlaces said) {
		for (PossiblePlaces.Outlook outlook : said.teams()) {
			check(outlook.segment(), this.segment.row(outlook.entry()).orElseThrow().place());
			PossiblePlaces.PlaceRange inEvent = outlook.event();
			if (inEvent != null) {
				check(inEvent, this.event.row(outlook.entry()).orElseThrow().place());
			}
		}
	}

	private static void check(PossiblePlaces.PlaceRange range, @Nullable Integer place) {
		assertThat(place).isBetween(range.best(), range.worst());
	}

}
