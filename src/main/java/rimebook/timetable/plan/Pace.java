package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

/**
 * How much longer than planned a team takes today, from its call to the next team's call.
 * Measured where one team was called right after another that the plan has right before
 * it: nothing was planned between the two, and neither was skated again. A rotation that
 * took less than half as long as planned, or more than twice as long, is no measure of
 * teams but of something else: a trial, an interruption, a pause. With fewer than three
 * measured, teams take as long as was planned.
 *
 * <p>
 * Of so many differences in ascending order the usual one is the middle one, the lower of
 * two; quick and slow are those a quarter from either end (nearest rank). All in whole
 * seconds.
 *
 * @param measured how many were measured
 * @param quick the difference that a quarter of the teams stayed below, or reached
 * @param usual the difference in the middle
 * @param slow the difference that three quarters stayed below, or reached
 */
public record Pace(int measured, long quick, long usual, long slow) {

	/** So many are needed before what was measured counts. */
	public static final int LEAST = 3;

	/** As planned. */
	public static final Pace PLANNED = new Pace(0, 0, 0, 0);

	/** Tell whether what was measured counts. */
	public boolean isMeasured() {
		return this.measured >= LEAST;
	}

	/** What differences in seconds say. */
	static Pace of(List<Long> differences) {
		if (differences.size() < LEAST) {
			return new Pace(differences.size(), 0, 0, 0);
		}
		List<Long> sorted = differences.stream().sorted().toList();
		return new Pace(sorted.size(), rank(sorted, 1), rank(sorted, 2), rank(sorted, 3));
	}

	/** The value of nearest rank at that many quarters. */
	private static long rank(List<Long> sorted, int quarters) {
		return sorted.get((sorted.size() * quarters + 3) / 4 - 1);
	}

	/** Measure what was skated of one surface on one day. */
	static Pace measured(Programmed.Ice ice, List<Skated> skated) {
		List<Long> differences = new ArrayList<>();
		ice.items().stream().filter(Programmed.Item::isSkated).forEach((item) -> measure(item, skated, differences));
		return of(differences);
	}

	/**
	 * Measure what was skated of some segments on all surfaces on the day that it is.
	 * @param segments by their identities
	 */
	public static Pace onDay(Programmed timetable, List<Skated> skated, Instant now, Set<UUID> segments) {
		List<Long> differences = new ArrayList<>();
		timetable.days().stream().filter((day) -> day.isOn(now, timetable.zone())).forEach((day) -> {
			List<Skated> called = day.called(skated, timetable.zone());
			day.ice()
				.stream()
				.flatMap((ice) -> ice.items().stream())
				.filter((item) -> item.isSkated() && item.of() != null && segments.contains(item.of().segment()))
				.forEach((item) -> measure(item, called, differences));
		});
		return of(differences);
	}

	private static void measure(Programmed.Item item, List<Skated> skated, List<Long> differences) {
		Map<UUID, Programmed.Line> lines = new HashMap<>();
		item.teams().forEach((line) -> lines.put(Objects.requireNonNull(line.team()).entry(), line));
		List<Skated> called = skated.stream()
			.filter((one) -> item.of() != null && one.segment().equals(item.of().segment()) && one.called() != null
					&& lines.containsKey(one.entry()))
			.sorted(Comparator.comparing((Skated one) -> Objects.requireNonNull(one.called())))
			.toList();
		for (int at = 1; at < called.size(); at++) {
			Programmed.Line earlier = Objects.requireNonNull(lines.get(called.get(at - 1).entry()));
			Programmed.Line later = Objects.requireNonNull(lines.get(called.get(at).entry()));
			if (earlier.ends().equals(later.begins()) && !called.get(at - 1).again()) {
				long took = between(called.get(at - 1), called.get(at));
				if (2 * took >= earlier.seconds() && took <= 2 * earlier.seconds()) {
					differences.add(took - earlier.seconds());
				}
			}
		}
	}

	private static long between(Skated earlier, Skated later) {
		Instant from = Objects.requireNonNull(earlier.called());
		return Duration.between(from, Objects.requireNonNull(later.called())).toSeconds();
	}

}
