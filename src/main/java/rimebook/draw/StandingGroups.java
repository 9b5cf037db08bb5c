package rimebook.draw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Cuts a standing into warm-up groups, the worst group first.
 * <p>
 * The nominal cut is that of {@link GroupSizes}. Ties at a border follow the US rulebook
 * of 2016-17, rule 2735: those who share a place stay together, nobody else changes
 * group, and a group that grows above its maximum by two or more is divided into two, the
 * tied ones and the rest. Where that text is silent this is our policy:
 * <ul>
 * <li>the tied ones go to the better of the groups they straddle, since the place they
 * share is one of its places;</li>
 * <li>a group that loses all its entries that way is left out;</li>
 * <li>of a divided group the tied ones, being the worse placed, start first; they are not
 * divided further, however many they are;</li>
 * <li>entries without a place share the one behind the last.</li>
 * </ul>
 * The separate draw that the rule asks for among the tied settles who of them draws
 * first. A ticket does not depend on who draws first, so there is none.
 */
final class StandingGroups {

	private StandingGroups() {
	}

	static List<List<Lot>> of(List<Lot> field, int maximum) {
		List<List<Lot>> groups = bestFirst(field, maximum).stream()
			.flatMap((group) -> divided(group, maximum).stream())
			.collect(Collectors.toCollection(ArrayList::new));
		Collections.reverse(groups);
		return groups;
	}

	private static Collection<List<Lot>> bestFirst(List<Lot> field, int maximum) {
		List<Lot> standing = field.stream().sorted(Lot.BY_STANDING).toList();
		List<Integer> nominal = nominalGroups(field.size(), maximum);
		SortedMap<Integer, List<Lot>> groups = new TreeMap<>();
		int group = 0;
		for (int i = 0; i < standing.size(); i++) {
			boolean tied = i > 0 && standing.get(i).isTiedWith(standing.get(i - 1));
			group = tied ? group : nominal.get(i);
			groups.computeIfAbsent(group, (any) -> new ArrayList<>()).add(standing.get(i));
		}
		return groups.values();
	}

	/** For each place of the standing the group it falls into, 0 being the best. */
	private static List<Integer> nominalGroups(int field, int maximum) {
		List<Integer> sizes = new ArrayList<>(GroupSizes.of(field, maximum));
		Collections.reverse(sizes);
		return IntStream.range(0, sizes.size())
			.boxed()
			.flatMap((group) -> Collections.nCopies(sizes.get(group), group).stream())
			.toList();
	}

	/** The group itself, or its rest and its tied ones, better placed first. */
	private static List<List<Lot>> divided(List<Lot> group, int maximum) {
		Lot last = group.get(group.size() - 1);
		List<Lot> rest = group.stream().filter((lot) -> !lot.isTiedWith(last)).toList();
		if (group.size() < maximum + 2 || rest.isEmpty()) {
			return List.of(group);
		}
		return List.of(rest, group.stream().filter(last::isTiedWith).toList());
	}

}
