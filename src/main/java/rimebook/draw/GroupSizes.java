package rimebook.draw;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How many start in each warm-up group: as few groups as the maximum allows, sizes that
 * differ by at most one, smaller groups first. So were the free skates of 1998 cut: 14
 * pairs at most 4 into 3, 3, 4, 4 and 19 pairs into 3, 4, 4, 4, 4.
 */
public final class GroupSizes {

	private GroupSizes() {
	}

	/**
	 * Split a field.
	 * @param field the number of entries, 1 or more
	 * @param maximum the most that may share a group, 1 or more
	 * @return the sizes in the order of the start
	 */
	public static List<Integer> of(int field, int maximum) {
		int groups = (field + maximum - 1) / maximum;
		int smaller = groups - field % groups;
		return IntStream.range(0, groups).map((group) -> field / groups + ((group < smaller) ? 0 : 1)).boxed().toList();
	}

}
