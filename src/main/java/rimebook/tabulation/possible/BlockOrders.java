package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

/**
 * Orders worth a look of several teams that skate yet: by what they have from the earlier
 * segments, forwards and backwards, and with each of them taken out and put first or
 * last.
 */
final class BlockOrders {

	private BlockOrders() {
	}

	static List<int[]> of(Teams teams, @Nullable EventKeys events) {
		List<Integer> ahead = new ArrayList<>(
				IntStream.range(teams.marked(), teams.size()).boxed().sorted(byEarlier(events)).toList());
		List<Integer> behind = new ArrayList<>(ahead);
		Collections.reverse(behind);
		List<int[]> orders = new ArrayList<>(List.of(array(ahead), array(behind)));
		for (Integer team : ahead) {
			orders.add(moved(behind, team, 0));
			orders.add(moved(ahead, team, 0));
			orders.add(moved(behind, team, ahead.size() - 1));
			orders.add(moved(ahead, team, ahead.size() - 1));
		}
		return orders;
	}

	private static Comparator<Integer> byEarlier(@Nullable EventKeys events) {
		return Comparator.comparingLong((team) -> (events != null && events.competes(team)) ? events.key(team, 1) : 0);
	}

	private static int[] moved(List<Integer> order, Integer team, int to) {
		List<Integer> moved = new ArrayList<>(order);
		moved.remove(team);
		moved.add(to, team);
		return array(moved);
	}

	private static int[] array(List<Integer> order) {
		return order.stream().mapToInt(Integer::intValue).toArray();
	}

}
