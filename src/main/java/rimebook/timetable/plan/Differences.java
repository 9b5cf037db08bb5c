package rimebook.timetable.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/** Tells how one published timetable differs from the one before. */
public final class Differences {

	private Differences() {
	}

	/**
	 * What became different, in the order of the new one, then what is gone. Times are
	 * compared as people read them, to the minute.
	 */
	public static List<Difference> between(Programmed before, Programmed after) {
		Map<UUID, At> were = byId(before);
		Map<UUID, At> are = byId(after);
		List<Difference> all = new ArrayList<>();
		are.forEach((id, now) -> {
			At was = were.get(id);
			if (was == null) {
				all.add(new Difference(What.ADDED, now.item(), null, now.item().begins(), now.surface()));
			}
			else {
				compare(was, now, all);
			}
		});
		were.forEach((id, was) -> {
			if (!are.containsKey(id)) {
				all.add(new Difference(What.REMOVED, was.item(), was.item().begins(), null, was.surface()));
			}
		});
		return all;
	}

	private static void compare(At was, At now, List<Difference> all) {
		boolean moved = !isSameMinute(was.item().begins(), now.item().begins());
		if (!was.surface().equals(now.surface())) {
			all.add(new Difference(What.SURFACE, now.item(), was.item().begins(), now.item().begins(), now.surface()));
		}
		else if (moved) {
			all.add(new Difference(What.TIME, now.item(), was.item().begins(), now.item().begins(), now.surface()));
		}
		else if (!teams(was.item()).equals(teams(now.item()))) {
			all.add(new Difference(What.TEAMS, now.item(), was.item().begins(), now.item().begins(), now.surface()));
		}
	}

	private static boolean isSameMinute(Instant one, Instant other) {
		return minute(one) == minute(other);
	}

	private static long minute(Instant instant) {
		return Math.floorDiv(instant.getEpochSecond(), 60);
	}

	/** When each team's turn is, counted from the beginning of the item. */
	private static Map<UUID, Long> teams(Programmed.Item item) {
		Map<UUID, Long> teams = new LinkedHashMap<>();
		item.teams().forEach((line) -> {
			if (line.team() != null) {
				teams.put(line.team().entry(), minute(line.begins()));
			}
		});
		return teams;
	}

	private static Map<UUID, At> byId(Programmed timetable) {
		Map<UUID, At> all = new LinkedHashMap<>();
		timetable.surfaces()
			.forEach((ice) -> ice.items().forEach((item) -> all.put(item.id(), new At(item, ice.surface()))));
		return all;
	}

	private record At(Programmed.Item item, String surface) {
	}

	/** What kind of difference it is. */
	public enum What {

		/** It was not there. */
		ADDED,

		/** It is no longer there. */
		REMOVED,

		/** It begins at another time. */
		TIME,

		/** It is on another surface, perhaps at another time. */
		SURFACE,

		/** It begins when it did, and some teams have other times. */
		TEAMS

	}

	/**
	 * Something that differs.
	 *
	 * @param item as it is now; as it was where it is gone
	 * @param was when it was to begin, {@code null} where it was not there
	 * @param now when it begins, {@code null} where it is gone
	 * @param surface where it is now; where it was, if it is gone
	 */
	public record Difference(What what, Programmed.Item item, @Nullable Instant was, @Nullable Instant now,
			String surface) {

		/** Tell whether it was and is on the same day, at the rink. */
		public boolean isOnOneDay(ZoneId zone) {
			return this.was != null && this.now != null
					&& this.was.atZone(zone).toLocalDate().equals(this.now.atZone(zone).toLocalDate());
		}

		/** Tell whether it concerns that event. */
		public boolean isAbout(UUID event) {
			return this.item.of() != null && Objects.equals(this.item.of().event().id(), event);
		}

	}

}
