package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Finds who is wanted in two places at once, or too soon again. */
final class Clashes {

	private static final Comparator<Stay> BY_TIME = Comparator.comparing(Stay::begins).thenComparing(Stay::ends);

	private final Plan plan;

	private final Programme programme;

	private final Map<UUID, Programme.Segment> segments;

	private final List<Laid.LaidBlock> blocks;

	private final List<Warning> warnings = new ArrayList<>();

	Clashes(Plan plan, Programme programme, List<Laid.LaidBlock> blocks) {
		this.plan = plan;
		this.programme = programme;
		this.segments = programme.byId();
		this.blocks = blocks;
	}

	List<Warning> warnings() {
		List<Stay> teams = this.blocks.stream().flatMap(this::teamStays).toList();
		by(teams, (stay) -> stay.team().entry().toString()).values().forEach(this::team);
		by(teams.stream().filter((stay) -> stay.kind() == Block.Kind.SEGMENT).toList(), (stay) -> stay.team().club())
			.values()
			.forEach(this::club);
		this.programme.people().forEach((person) -> person(person, teams));
		music();
		return this.warnings;
	}

	/**
	 * One after the other: whoever overlaps with any earlier one overlaps with the
	 * longest.
	 */
	private void team(List<Stay> stays) {
		for (int at = 1; at < stays.size(); at++) {
			Stay earlier = longest(stays.subList(0, at));
			Stay later = stays.get(at);
			if (later.begins().isBefore(earlier.ends())) {
				warn(Warning.Kind.TEAM, later, Sentence.of("timetable.warning.team", later.team().name(),
						earlier.name(), later.name(), clock(later.begins())));
			}
			else if (isBothSkated(earlier, later) && isTooSoon(earlier, later, this.plan.rules().care().rest())) {
				warn(Warning.Kind.REST, later,
						Sentence.of("timetable.warning.rest", later.team().name(), minutesBetween(earlier, later),
								earlier.name(), later.name(), minutes(this.plan.rules().care().rest())));
			}
		}
	}

	private static boolean isBothSkated(Stay earlier, Stay later) {
		return earlier.kind() == Block.Kind.SEGMENT && later.kind() == Block.Kind.SEGMENT;
	}

	private void club(List<Stay> stays) {
		for (int at = 1; at < stays.size(); at++) {
			Stay earlier = longest(stays.subList(0, at));
			Stay later = stays.get(at);
			boolean other = !earlier.team().entry().equals(later.team().entry());
			if (other && isTooSoon(earlier, later, this.plan.rules().care().changing())) {
				warn(Warning.Kind.CHANGING, later,
						Sentence.of("timetable.warning.changing", later.team().club(), earlier.team().name(),
								later.team().name(), clock(later.begins()), Math.max(0, minutesBetween(earlier, later)),
								minutes(this.plan.rules().care().changing())));
			}
		}
	}

	/** Each pair of blocks is told once, however many teams of it are coached. */
	private void person(Programme.Person person, List<Stay> teams) {
		List<Stay> stays = new ArrayList<>();
		this.blocks.stream().filter((laid) -> isWanted(person, laid)).map(this::whole).forEach(stays::add);
		teams.stream().filter((stay) -> person.coached().contains(stay.team().entry())).forEach(stays::add);
		stays.sort(BY_TIME);
		Set<Set<UUID>> told = new HashSet<>();
		for (int at = 1; at < stays.size(); at++) {
			Stay later = stays.get(at);
			stays.subList(0, at)
				.stream()
				.filter((earlier) -> !earlier.block().equals(later.block()) && later.begins().isBefore(earlier.ends()))
				.filter((earlier) -> told.add(Set.of(earlier.block(), later.block())))
				.forEach((earlier) -> warn(Warning.Kind.PERSON, later, Sentence.of("timetable.warning.person",
						person.name(), earlier.name(), later.name(), clock(later.begins()))));
		}
	}

	private boolean isWanted(Programme.Person person, Laid.LaidBlock laid) {
		Block.Kind kind = laid.block().kind();
		Programme.Segment segment = this.segments.get(laid.block().segment());
		return (kind == Block.Kind.SEGMENT || kind == Block.Kind.MEETING) && segment != null
				&& person.events().contains(segment.event().id());
	}

	private void music() {
		List<Stay> skated = this.blocks.stream()
			.filter((laid) -> laid.block().kind() == Block.Kind.SEGMENT && laid.begins().isBefore(laid.ends()))
			.map(this::whole)
			.sorted(BY_TIME)
			.toList();
		for (int at = 1; at < skated.size(); at++) {
			Stay later = skated.get(at);
			List<Stay> meanwhile = skated.subList(0, at)
				.stream()
				.filter((earlier) -> later.begins().isBefore(earlier.ends()))
				.toList();
			if (meanwhile.size() >= this.plan.rules().care().musicDesks()) {
				warn(Warning.Kind.MUSIC, later,
						Sentence.of("timetable.warning.music", later.name(),
								meanwhile.stream().map(Stay::name).toList(), clock(later.begins()),
								this.plan.rules().care().musicDesks()));
			}
		}
	}

	private Stream<Stay> teamStays(Laid.LaidBlock laid) {
		return laid.teams().stream().map((slot) -> new Stay(laid, slot.begins(), slot.ends(), slot.team(), name(laid)));
	}

	private Stay whole(Laid.LaidBlock laid) {
		return new Stay(laid, laid.begins(), laid.ends(), null, name(laid));
	}

	private Sentence name(Laid.LaidBlock laid) {
		return BlockName.of(laid.block(), this.segments);
	}

	private static Map<String, List<Stay>> by(List<Stay> stays, Function<Stay, String> key) {
		Map<String, List<Stay>> all = new TreeMap<>();
		stays.stream()
			.sorted(BY_TIME)
			.forEach((stay) -> all.computeIfAbsent(key.apply(stay), (absent) -> new ArrayList<>()).add(stay));
		return all;
	}

	private static Stay longest(List<Stay> earlier) {
		return earlier.stream().max(Comparator.comparing(Stay::ends)).orElseThrow();
	}

	private static boolean isTooSoon(Stay earlier, Stay later, int seconds) {
		return later.begins().isBefore(earlier.ends().plusSeconds(seconds));
	}

	private static int minutesBetween(Stay earlier, Stay later) {
		return Math.toIntExact(Duration.between(earlier.ends(), later.begins()).toMinutes());
	}

	private static int minutes(int seconds) {
		return Clocks.minutes(Duration.ofSeconds(seconds));
	}

	private void warn(Warning.Kind kind, Stay later, Sentence why) {
		this.warnings.add(new Warning(kind, later.block(), later.begins(), why));
	}

	private String clock(Instant instant) {
		return Clocks.dayAndTime(instant, this.programme.zone());
	}

	/**
	 * That a team, or somebody, is at a place for a time.
	 *
	 * @param someone the team, {@code null} where it is the whole block
	 */
	private record Stay(Laid.LaidBlock laid, Instant begins, Instant ends, Programme.@Nullable Team someone,
			Sentence name) {

		UUID block() {
			return this.laid.block().id();
		}

		Block.Kind kind() {
			return this.laid.block().kind();
		}

		Programme.Team team() {
			if (this.someone == null) {
				throw new IllegalStateException("A whole block has no team");
			}
			return this.someone;
		}

	}

}
