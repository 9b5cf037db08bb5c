package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Combination;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.EventStanding;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentStanding;

/** What can really happen in a situation, found by trying out everything. */
final class Truth {

	private final RandomSituation situation;

	private final List<EntryCards> onCards;

	private final List<String> names;

	private final Map<List<Integer>, int[]> events = new HashMap<>();

	private final Extremes segment;

	private final Extremes event;

	/** By team still to skate, then by finish. */
	private final Extremes[] byFinish;

	private int outcomes;

	Truth(RandomSituation situation) {
		this.situation = situation;
		this.onCards = situation.entries().stream().filter(this::isOnTheCards).toList();
		this.names = new ArrayList<>(this.onCards.stream().map(EntryCards::entry).toList());
		this.names.addAll(situation.toSkate());
		this.segment = new Extremes(this.names.size());
		this.event = new Extremes(this.names.size());
		this.byFinish = IntStream.range(0, situation.toSkate().size())
			.mapToObj((i) -> new Extremes(Finish.count(this.names.size())))
			.toArray(Extremes[]::new);
		tryEverything();
	}

	private boolean isOnTheCards(EntryCards entry) {
		return !entry.cards().isEmpty() && (entry.status() == EntryStatus.SKATED
				|| this.situation.rules().disqualifiedPlaces() != DisqualifiedPlaces.CLOSE_ALL_PLACES);
	}

	Extremes segment() {
		return this.segment;
	}

	/** Nothing in it for a team that gets no place in the event. */
	Extremes event() {
		return this.event;
	}

	/** Places in the event of a team still to skate, by its finish. */
	Extremes byFinish(String name) {
		return this.byFinish[index(name) - this.onCards.size()];
	}

	int outcomes() {
		return this.outcomes;
	}

	int size() {
		return this.names.size();
	}

	int index(String name) {
		return this.names.indexOf(name);
	}

	private void tryEverything() {
		EveryOutcome every = new EveryOutcome(this.situation.rules(), this.onCards, this.situation.judges());
		List<List<List<CardMarks>>> choices = every.choices(this.situation.toSkate().size());
		int[][][] ranks = new int[choices.size()][][];
		for (int judge = 0; judge < ranks.length; judge++) {
			ranks[judge] = every.ranks(choices, judge);
		}
		int total = choices.stream().mapToInt(List::size).reduce(1, (a, b) -> a * b);
		EveryOutcome.combine(choices, (chosen) -> {
			int[][] panel = new int[chosen.length][];
			for (int judge = 0; judge < chosen.length; judge++) {
				panel[judge] = ranks[judge][chosen[judge]];
			}
			int[] places = PlainPlaces.of(this.situation.rules(), panel);
			note(places);
			if (this.outcomes++ == total / 2) {
				compare(every.cards(choices, chosen, this.situation.toSkate()), places);
			}
		});
	}

	private void note(int[] places) {
		int[] inEvent = this.events.computeIfAbsent(IntStream.of(places).boxed().toList(), (key) -> event(places));
		for (int team = 0; team < places.length; team++) {
			this.segment.note(team, places[team]);
			if (inEvent[team] > 0) {
				this.event.note(team, inEvent[team]);
			}
		}
		for (int i = 0; i < this.byFinish.length; i++) {
			int team = this.onCards.size() + i;
			int own = places[team];
			boolean shared = IntStream.of(places).filter((place) -> place == own).count() > 1;
			this.byFinish[i].note(Finish.of(own, shared), inEvent[team]);
		}
	}

	private int[] event(int[] places) {
		List<EntryPlaces> entries = this.situation.earlier().places().stream().map((earlier) -> {
			List<@Nullable Integer> all = new ArrayList<>(earlier.places());
			all.add((index(earlier.entry()) >= 0) ? (Integer) places[index(earlier.entry())] : null);
			return new EntryPlaces(earlier.entry(), earlier.status(), all);
		}).toList();
		int[] inEvent = new int[places.length];
		for (EventStanding.EventRow row : Combination.combine(this.situation.earlier().rules(), entries).rows()) {
			Integer place = row.place();
			if (index(row.entry()) >= 0 && place != null) {
				inEvent[index(row.entry())] = place;
			}
		}
		return inEvent;
	}

	/** Make sure that the plain places are those of the tabulation. */
	private void compare(List<EntryCards> cards, int[] places) {
		SegmentStanding standing = PlacementTabulation.ofCards(this.situation.rules(), cards);
		for (PlacedEntry row : standing.rows()) {
			if (row.place() != null && row.place() != places[index(row.entry())]) {
				throw new AssertionError("Plain places of " + cards + " are not those of " + standing);
			}
		}
	}

}
