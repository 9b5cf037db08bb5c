package rimebook.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts a field into its starting order. A pure function of the method, the lots and the
 * group maximum: the order in which the lots are handed in does not matter.
 */
final class Drawing {

	private Drawing() {
	}

	/**
	 * Draw the groups in the order of the start, each in its starting order.
	 * @param method how the order comes about
	 * @param field the lots of all that start, 1 or more
	 * @param groupMaximum the most that may share a warm-up group, 1 or more
	 */
	static List<List<Lot>> of(DrawMethod method, List<Lot> field, int groupMaximum) {
		return switch (method) {
			case WHOLE_FIELD -> cut(sorted(field, Lot.BY_TICKET), GroupSizes.of(field.size(), groupMaximum));
			case GROUPS_FROM_STANDING -> standing(field, groupMaximum, Lot.BY_TICKET);
			case REVERSE_STANDING -> standing(field, groupMaximum, Lot.BY_REVERSE_STANDING);
		};
	}

	private static List<List<Lot>> standing(List<Lot> field, int groupMaximum, Comparator<Lot> inside) {
		return StandingGroups.of(field, groupMaximum).stream().map((group) -> sorted(group, inside)).toList();
	}

	private static List<List<Lot>> cut(List<Lot> order, List<Integer> sizes) {
		List<List<Lot>> groups = new ArrayList<>();
		int start = 0;
		for (int size : sizes) {
			groups.add(order.subList(start, start + size));
			start += size;
		}
		return groups;
	}

	private static List<Lot> sorted(List<Lot> lots, Comparator<Lot> order) {
		return lots.stream().sorted(order).toList();
	}

}
