package rimebook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;

/**
 * An invented field: every team has a strength, and every judge sees it a little
 * differently.
 */
final class PlausibleEvent {

	private static final int SPREAD = 12;

	private final Random random = new Random(1_998);

	private final int judges;

	private final List<Integer> strengths;

	PlausibleEvent(int teams, int judges) {
		this.judges = judges;
		this.strengths = IntStream.range(0, teams).mapToObj((team) -> 25 + this.random.nextInt(25)).toList();
	}

	/** Return the cards of a segment. */
	List<EntryCards> segment(int teams) {
		List<EntryCards> cards = new ArrayList<>();
		for (int team = 0; team < teams; team++) {
			int strength = this.strengths.get(team);
			cards.add(EntryCards.skated(name(team),
					IntStream.range(0, this.judges)
						.mapToObj((judge) -> new CardMarks(mark(strength), mark(strength)))
						.toList()));
		}
		return cards;
	}

	private int mark(int strength) {
		return CardMarks.STEP * (strength + this.random.nextInt(SPREAD));
	}

	/** Return places in an earlier segment, near the order of strength. */
	List<EntryPlaces> earlierPlaces() {
		List<Integer> order = new ArrayList<>(IntStream.range(0, this.strengths.size()).boxed().toList());
		List<Integer> shown = this.strengths.stream().map((strength) -> strength + this.random.nextInt(SPREAD)).toList();
		order.sort((one, other) -> shown.get(other) - shown.get(one));
		return IntStream.range(0, order.size())
			.mapToObj((i) -> EntryPlaces.of(name(order.get(i)), i + 1))
			.toList();
	}

	static String name(int team) {
		return "E" + (100 + team);
	}

}
