package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * When teams that are still to come are expected on the ice, from what was published and
 * what the ice told so far. A pure function of these and the time.
 *
 * <p>
 * The rule, surface by surface and day by day: the next team comes when the one called
 * last has had the time that a team takes today ({@link Pace}), and not before now. After
 * that each team takes as long as teams do today, and what the plan has between two teams
 * (resurfacing, a warm-up) takes as long as planned. A team that will not skate takes no
 * time. One that was passed over, or waits by the referee's word, comes after the others.
 * What follows a segment begins when the segment is over, and never before the time it
 * was published for; so does the first team of a segment that nobody was called in. Only
 * within a segment may a team be early, and then the page says so. The band goes from
 * where every team is as quick as the quickest quarter to where every team is as slow as
 * the slowest.
 *
 * @param expected by what was published, in the order of the published timetable
 */
public record Estimate(List<Expected> expected, Map<Integer, Pace> paces) {

	/**
	 * Estimate the day that it is; of other days there is nothing to expect but what was
	 * published. What was called on another day, as in a rehearsal, moves nothing.
	 */
	public static Estimate of(Programmed timetable, List<Skated> skated, Instant now) {
		List<Expected> all = new ArrayList<>();
		Map<Integer, Pace> paces = new HashMap<>();
		int surface = 0;
		for (Programmed.Day day : timetable.days()) {
			boolean today = day.isOn(now, timetable.zone());
			List<Skated> called = day.called(skated, timetable.zone());
			for (Programmed.Ice ice : day.ice()) {
				Pace pace = Pace.measured(ice, called);
				paces.put(surface, pace);
				if (today) {
					all.addAll(new Course(ice, called, pace, now).expected());
				}
				surface++;
			}
		}
		return new Estimate(List.copyOf(all), Map.copyOf(paces));
	}

	/** What is expected of a team in an item; empty where nothing more is to be said. */
	public Optional<Expected> of(UUID item, UUID entry) {
		return this.expected.stream().filter((one) -> one.item().equals(item) && entry.equals(one.entry())).findFirst();
	}

	/** When an item as a whole is expected to begin, if it has not. */
	public Optional<Expected> of(UUID item) {
		return this.expected.stream().filter((one) -> one.item().equals(item) && one.entry() == null).findFirst();
	}

	/** The team that is expected first of those still to come, on any surface. */
	public Optional<Expected> next() {
		return this.expected.stream().filter((one) -> one.entry() != null).min(Comparator.comparing(Expected::at));
	}

	/**
	 * When something is expected.
	 *
	 * @param entry the team, {@code null} for the item as a whole
	 * @param published when it was to be
	 * @param soonest where the band begins
	 * @param latest where it ends
	 */
	public record Expected(UUID item, @Nullable UUID entry, Instant published, Instant at, Instant soonest,
			Instant latest) {

		/** Whole minutes later than published, negative where earlier; nearest minute. */
		public int minutesLate() {
			return Math.toIntExact(Math.floorDiv(Duration.between(this.published, this.at).toSeconds() + 30, 60));
		}

		/** Tell whether the band is more than one minute wide. */
		public boolean hasBand() {
			return Duration.between(this.soonest, this.latest).toSeconds() >= 60;
		}

	}

	/** Goes through one surface on one day. Used once. */
	private static final class Course {

		private final Programmed.Ice ice;

		private final List<Skated> skated;

		private final Pace pace;

		private final Instant now;

		private final List<Expected> expected = new ArrayList<>();

		/** When the ice is free, {@code null} before anything is known of the day. */
		private @Nullable Reach free;

		Course(Programmed.Ice ice, List<Skated> skated, Pace pace, Instant now) {
			this.ice = ice;
			this.skated = skated;
			this.pace = pace;
			this.now = now;
		}

		List<Expected> expected() {
			this.ice.items().forEach((item) -> {
				if (!item.aside()) {
					go(item);
				}
			});
			return this.expected;
		}

		private void go(Programmed.Item item) {
			List<Skated> teams = item.isSkated() ? teams(item) : List.of();
			Skated last = teams.stream()
				.filter((one) -> one.called() != null)
				.max(Comparator.comparing((Skated one) -> Objects.requireNonNull(one.called())))
				.orElse(null);
			if (last != null) {
				goOn(item, teams, last);
			}
			else {
				begin(item, teams);
			}
		}

		/** Nobody was called yet: it begins when the ice is free, and not too early. */
		private void begin(Programmed.Item item, List<Skated> teams) {
			Reach before = this.free;
			Reach begins = (before != null) ? before.plus(item.gap()).notBefore(item.begins())
					: Reach.at(item.begins());
			boolean tells = item.isSkated() ? teams.stream().anyMatch((one) -> one.state() == Skated.State.WAITING)
					: !item.begins().isBefore(this.now);
			Reach from = tells ? begins.notBefore(this.now) : begins;
			if (tells) {
				this.expected.add(from.as(item.id(), null, item.begins()));
			}
			if (item.isSkated() && !teams.isEmpty()) {
				this.free = walk(item, teams, from, -1);
				return;
			}
			this.free = from.plus(Duration.between(item.begins(), item.ends()).toSeconds());
		}

		/** Somebody was called: what comes follows from that. */
		private void goOn(Programmed.Item item, List<Skated> teams, Skated last) {
			int position = position(item, furthest(item, teams));
			long planned = item.lines().get(position(item, last)).seconds();
			Instant called = Objects.requireNonNull(last.called());
			Reach next = Reach.at(called).plus(planned, this.pace);
			boolean over = teams.stream()
				.noneMatch((one) -> one.state() == Skated.State.WAITING || one.state() == Skated.State.ON_ICE);
			if (over) {
				Instant closed = last.over();
				this.free = (closed != null) ? Reach.at(closed) : next;
				return;
			}
			this.free = walk(item, teams, next.notBefore(this.now), position);
		}

		/** Go through what is still to come of an item, from behind a position on. */
		private Reach walk(Programmed.Item item, List<Skated> teams, Reach from, int position) {
			Map<UUID, Skated> byEntry = new HashMap<>();
			teams.forEach((one) -> byEntry.put(one.entry(), one));
			Reach at = from;
			List<Programmed.Line> after = new ArrayList<>();
			for (int index = 0; index < item.lines().size(); index++) {
				Programmed.Line line = item.lines().get(index);
				Skated one = (line.team() != null) ? byEntry.get(line.team().entry()) : null;
				boolean waits = one != null && one.state() == Skated.State.WAITING;
				if (waits && one != null && (one.later() || index <= position)) {
					after.add(line);
				}
				else if (index > position && (waits || line.team() == null)) {
					at = take(item, line, at);
				}
			}
			for (Programmed.Line line : after) {
				at = take(item, line, at);
			}
			return at;
		}

		private Reach take(Programmed.Item item, Programmed.Line line, Reach at) {
			if (line.team() == null) {
				return at.plus(line.seconds());
			}
			this.expected.add(at.as(item.id(), line.team().entry(), line.begins()));
			return at.plus(line.seconds(), this.pace);
		}

		/** The one that was called and stands last in the plan. */
		private static Skated furthest(Programmed.Item item, List<Skated> teams) {
			return teams.stream()
				.filter((one) -> one.called() != null)
				.max(Comparator.comparing((Skated one) -> position(item, one)))
				.orElseThrow();
		}

		private static int position(Programmed.Item item, Skated one) {
			for (int index = 0; index < item.lines().size(); index++) {
				if (item.lines().get(index).isOf(one.entry())) {
					return index;
				}
			}
			throw new IllegalStateException("Only teams of the item are asked for");
		}

		/** Those of its segment that the item has a time for. */
		private List<Skated> teams(Programmed.Item item) {
			return this.skated.stream()
				.filter((one) -> item.of() != null && one.segment().equals(item.of().segment())
						&& item.lines().stream().anyMatch((line) -> line.isOf(one.entry())))
				.toList();
		}

	}

	/** A time that is expected, with its band. */
	private record Reach(Instant soonest, Instant at, Instant latest) {

		static Reach at(Instant instant) {
			return new Reach(instant, instant, instant);
		}

		Reach plus(long seconds) {
			return new Reach(this.soonest.plusSeconds(seconds), this.at.plusSeconds(seconds),
					this.latest.plusSeconds(seconds));
		}

		/** As long as a team takes that was planned so long; never less than nothing. */
		Reach plus(long planned, Pace pace) {
			return new Reach(this.soonest.plusSeconds(Math.max(0, planned + pace.quick())),
					this.at.plusSeconds(Math.max(0, planned + pace.usual())),
					this.latest.plusSeconds(Math.max(0, planned + pace.slow())));
		}

		Reach notBefore(Instant least) {
			return new Reach(later(this.soonest, least), later(this.at, least), later(this.latest, least));
		}

		private static Instant later(Instant one, Instant other) {
			return one.isAfter(other) ? one : other;
		}

		Expected as(UUID item, @Nullable UUID entry, Instant published) {
			return new Expected(item, entry, published, this.at, this.soonest, this.latest);
		}

	}

}
