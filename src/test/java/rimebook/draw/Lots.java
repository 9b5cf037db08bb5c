package rimebook.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/** Fields to draw from: entry 1, entry 2 and so on, standing in that order. */
final class Lots {

	private Lots() {
	}

	/** A field without ties in which entry n has place n. */
	static List<Lot> field(String seed, int size) {
		return IntStream.rangeClosed(1, size).mapToObj((place) -> lot(seed, place, place)).toList();
	}

	/** A field in which entry n has the n-th of these places. */
	static List<Lot> placed(String seed, List<@Nullable Integer> places) {
		return IntStream.range(0, places.size()).mapToObj((i) -> lot(seed, i + 1, places.get(i))).toList();
	}

	/** Places 1, 1, 3 and so on with about one tie in three. */
	static List<@Nullable Integer> placesWithTies(int size, RandomGenerator random) {
		List<@Nullable Integer> places = new ArrayList<>();
		for (int i = 0; i < size; i++) {
			places.add((i > 0 && random.nextInt(3) == 0) ? places.get(i - 1) : Integer.valueOf(i + 1));
		}
		return places;
	}

	/** The number of an entry of these fields. */
	static int number(Lot lot) {
		return (int) lot.entry().value().getLeastSignificantBits();
	}

	static List<List<Integer>> numbers(List<List<Lot>> groups) {
		return groups.stream().map((group) -> group.stream().map(Lots::number).toList()).toList();
	}

	private static Lot lot(String seed, int number, @Nullable Integer place) {
		DrawTicket ticket = DrawTicket.of(seed, "Free Skating", "Team " + number, "Club " + number);
		return Lot.of(new EntryId(new UUID(0, number)), place, ticket);
	}

}
