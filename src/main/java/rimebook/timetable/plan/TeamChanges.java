package rimebook.timetable.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * Tells each club what became different for its teams between two published timetables:
 * when they skate and practise, and the ceremonies of their events. Times are compared as
 * people read them, to the minute; what a plan calls a block does not matter, so that one
 * that was made anew is no change where its times are the same.
 */
public final class TeamChanges {

	private TeamChanges() {
	}

	/** Club by club, in the order of their names; clubs without a change are left out. */
	public static List<OfClub> between(Programmed before, Programmed after) {
		Map<Key, Turn> were = turns(before);
		Map<Key, Turn> are = turns(after);
		Set<Key> keys = new LinkedHashSet<>(are.keySet());
		keys.addAll(were.keySet());
		Map<UUID, List<Change>> changes = new LinkedHashMap<>();
		Map<UUID, Programme.Team> teams = new HashMap<>();
		for (Key key : keys) {
			Turn was = were.get(key);
			Turn now = are.get(key);
			Turn known = (now != null) ? now : Objects.requireNonNull(was);
			if (was == null || now == null || !was.when().isRead(now.when())) {
				teams.put(key.entry(), known.team());
				changes.computeIfAbsent(key.entry(), (absent) -> new ArrayList<>())
					.add(new Change(known.item(), (was != null) ? was.when() : null,
							(now != null) ? now.when() : null));
			}
		}
		return clubs(changes, teams);
	}

	private static List<OfClub> clubs(Map<UUID, List<Change>> changes, Map<UUID, Programme.Team> teams) {
		Map<String, List<OfTeam>> clubs = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
		changes.forEach((entry, all) -> {
			Programme.Team team = Objects.requireNonNull(teams.get(entry));
			clubs.computeIfAbsent(team.club(), (absent) -> new ArrayList<>())
				.add(new OfTeam(team, all.stream().sorted(Comparator.comparing(Change::at)).toList()));
		});
		return clubs.entrySet()
			.stream()
			.map((club) -> new OfClub(club.getKey(),
					club.getValue()
						.stream()
						.sorted(Comparator.comparing((OfTeam one) -> one.team().name(), String.CASE_INSENSITIVE_ORDER))
						.toList()))
			.toList();
	}

	private static Map<Key, Turn> turns(Programmed timetable) {
		Map<Key, Turn> turns = new LinkedHashMap<>();
		Map<UUID, Map<UUID, Programme.Team>> ofEvents = new HashMap<>();
		timetable.surfaces()
			.forEach((ice) -> ice.items()
				.forEach((item) -> item.teams().forEach((line) -> add(turns, ofEvents, ice, item, line))));
		timetable.surfaces()
			.forEach((ice) -> ice.items()
				.stream()
				.filter((item) -> item.kind() == Block.Kind.CEREMONY && item.of() != null)
				.forEach((item) -> ofEvents.getOrDefault(event(item), Map.of())
					.values()
					.forEach((team) -> add(turns, item, new Turn(item, team, new When(item.begins(), ice.surface())),
							event(item)))));
		return turns;
	}

	private static void add(Map<Key, Turn> turns, Map<UUID, Map<UUID, Programme.Team>> ofEvents, Programmed.Ice ice,
			Programmed.Item item, Programmed.Line line) {
		Programme.Team team = Objects.requireNonNull(line.team());
		if (item.of() != null) {
			ofEvents.computeIfAbsent(event(item), (absent) -> new LinkedHashMap<>()).put(team.entry(), team);
		}
		add(turns, item, new Turn(item, team, new When(line.begins(), ice.surface())),
				(item.of() != null) ? item.of().segment() : item.id());
	}

	/** The second practice of a segment is another one than the first. */
	private static void add(Map<Key, Turn> turns, Programmed.Item item, Turn turn, UUID subject) {
		int nth = 1;
		Key key = new Key(item.kind(), subject, turn.team().entry(), nth);
		while (turns.containsKey(key)) {
			key = new Key(item.kind(), subject, turn.team().entry(), ++nth);
		}
		turns.put(key, turn);
	}

	private static UUID event(Programmed.Item item) {
		return Objects.requireNonNull(item.of()).event().id();
	}

	/** What one club has to hear. */
	public record OfClub(String club, List<OfTeam> teams) {
	}

	/**
	 * What one team has to hear.
	 *
	 * @param changes in the order of time
	 */
	public record OfTeam(Programme.Team team, List<Change> changes) {
	}

	/**
	 * A time that became different.
	 *
	 * @param item what it is for
	 * @param was {@code null} where it was not there
	 * @param now {@code null} where it is gone
	 */
	public record Change(Programmed.Item item, @Nullable When was, @Nullable When now) {

		Instant at() {
			return Objects.requireNonNull((this.now != null) ? this.now : this.was).at();
		}

	}

	/** A time on an ice surface. */
	public record When(Instant at, String surface) {

		/** Tell whether both are read the same. */
		boolean isRead(When other) {
			return Math.floorDiv(this.at.getEpochSecond(), 60) == Math.floorDiv(other.at.getEpochSecond(), 60)
					&& this.surface.equals(other.surface);
		}

	}

	/**
	 * @param subject the segment, or the event of a ceremony, or what it is itself
	 */
	private record Key(Block.Kind kind, UUID subject, UUID entry, int nth) {
	}

	private record Turn(Programmed.Item item, Programme.Team team, When when) {
	}

}
