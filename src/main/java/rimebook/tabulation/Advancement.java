package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Who goes on from an initial or qualifying round of one group or several, and where the
 * others are placed. A place counts inside its own group, so with two groups two teams
 * are 1st (World Championships of 1999 and 2000, tables at iceskatingintnl.com). Where
 * the round has a factor, give its group places to {@link Combination} as those of a
 * segment; where it has none, only those who advance are combined and the others follow
 * behind them in the places given here, as published results list those who did not reach
 * the final segment (same tables).
 *
 * @param advancing identifiers by place in the group, then by group
 * @param behind those who were placed and did not advance; not those who withdrew
 */
public record Advancement(List<String> advancing, List<Behind> behind) {

	public Advancement {
		advancing = List.copyOf(advancing);
		behind = List.copyOf(behind);
	}

	/**
	 * Decide who goes on.
	 * @param rules how many, and the policies
	 * @param groups the standings of the groups
	 * @param withdrawn identifiers of teams that withdrew after the round
	 * @return who goes on and who does not
	 * @throws TabulationException {@code duplicate-entry}: a team is in two groups
	 */
	public static Advancement of(AdvancementRules rules, List<SegmentStanding> groups, Set<String> withdrawn) {
		PanelCheck.eachOnce(groups.stream().flatMap((group) -> group.rows().stream()).map(PlacedEntry::entry).toList());
		List<GroupPlace> advancing = new ArrayList<>();
		List<GroupPlace> others = new ArrayList<>();
		for (int i = 0; i < groups.size(); i++) {
			List<GroupPlace> placed = placed(groups.get(i), i);
			List<GroupPlace> first = first(rules, placed, withdrawn);
			advancing.addAll(first);
			placed.stream().filter((team) -> !first.contains(team)).forEach(others::add);
		}
		advancing.removeIf((team) -> withdrawn.contains(team.entry()));
		others.removeIf((team) -> withdrawn.contains(team.entry()));
		advancing.sort(GroupPlace.ORDER);
		return new Advancement(advancing.stream().map(GroupPlace::entry).toList(), behind(others, advancing.size()));
	}

	private static List<GroupPlace> placed(SegmentStanding group, int number) {
		return group.rows()
			.stream()
			.filter((row) -> row.place() != null)
			.map((row) -> new GroupPlace(row.entry(), Objects.requireNonNull(row.place()), number))
			.toList();
	}

	private static List<GroupPlace> first(AdvancementRules rules, List<GroupPlace> placed, Set<String> withdrawn) {
		List<GroupPlace> candidates = placed.stream()
			.filter((team) -> rules.vacancies() == AdvancementRules.Vacancies.LEAVE
					|| !withdrawn.contains(team.entry()))
			.toList();
		return candidates.stream().filter((team) -> advances(rules, team, candidates)).toList();
	}

	private static boolean advances(AdvancementRules rules, GroupPlace team, List<GroupPlace> candidates) {
		long before = candidates.stream().filter((other) -> other.place() < team.place()).count();
		long level = candidates.stream().filter((other) -> other.place() == team.place()).count();
		return before + level <= rules.perGroup()
				|| (before < rules.perGroup() && rules.ties() == AdvancementRules.LastPlaceTies.ALL_ADVANCE);
	}

	private static List<Behind> behind(Collection<GroupPlace> others, int advancing) {
		return others.stream().sorted(GroupPlace.ORDER).map((team) -> {
			long before = others.stream().filter((other) -> other.place() < team.place()).count();
			long level = others.stream().filter((other) -> other.place() == team.place()).count();
			return new Behind(team.entry(), 1 + advancing + (int) before, level > 1);
		}).toList();
	}

	/**
	 * A team that did not advance.
	 *
	 * @param entry identifier
	 * @param place in the event, behind all who advance
	 * @param shared whether others have the same place: those with the same place in
	 * another group, or level with it in its own
	 */
	public record Behind(String entry, int place, boolean shared) {

	}

	private record GroupPlace(String entry, int place, int group) {

		static final Comparator<GroupPlace> ORDER = Comparator.comparingInt(GroupPlace::place)
			.thenComparingInt(GroupPlace::group)
			.thenComparing(GroupPlace::entry);

	}

}
