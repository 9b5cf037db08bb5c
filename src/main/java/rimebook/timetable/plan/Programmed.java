package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

/**
 * What a published timetable promises: every block and every team with its time, in the
 * names of the day on which it was published. Stored as it is and never changed.
 *
 * @param zone the rink's, by its name
 */
public record Programmed(String zone, List<Day> days) {

	public Programmed {
		days = List.copyOf(days);
	}

	/** What a plan promises once it is laid out. */
	public static Programmed of(Plan plan, Laid laid, Programme programme) {
		Map<UUID, Programme.Segment> segments = programme.byId();
		return new Programmed(programme.zone().getId(),
				plan.days()
					.stream()
					.map((day) -> new Day(day,
							laid.sheets()
								.stream()
								.filter((sheet) -> sheet.sheet().place().day().equals(day) && !sheet.blocks().isEmpty())
								.map((sheet) -> new Ice(plan.surface(sheet.sheet().place().surface()),
										sheet.blocks().stream().map((block) -> Item.of(block, segments)).toList()))
								.toList()))
					.filter((day) -> !day.ice().isEmpty())
					.toList());
	}

	/** All items, day by day and surface by surface. */
	public List<Item> items() {
		return surfaces().flatMap((ice) -> ice.items().stream()).toList();
	}

	/** When each team of a segment skates, by its entry, in the order of the days. */
	public Map<UUID, Instant> teamTimes(UUID segment) {
		Map<UUID, Instant> times = new LinkedHashMap<>();
		items().stream()
			.filter((item) -> item.isSkated() && item.of() != null && item.of().segment().equals(segment))
			.flatMap((item) -> item.teams().stream())
			.forEach((line) -> times.putIfAbsent(Objects.requireNonNull(line.team()).entry(), line.begins()));
		return times;
	}

	/** All surfaces of all days. */
	public Stream<Ice> surfaces() {
		return this.days.stream().flatMap((day) -> day.ice().stream());
	}

	/** That day, if anything happens on it. */
	public Optional<Day> day(LocalDate day) {
		return this.days.stream().filter((one) -> one.day().equals(day)).findFirst();
	}

	/**
	 * A day.
	 *
	 * @param ice the surfaces on which something happens
	 */
	public record Day(LocalDate day, List<Ice> ice) {

		/** So long after midnight a day may still go on. */
		private static final Duration LATE = Duration.ofHours(30);

		public Day {
			ice = List.copyOf(ice);
		}

		/** Tell whether it is the day that it is then, or that night. */
		boolean isOn(Instant now, String zone) {
			return !now.isBefore(begins(zone)) && now.isBefore(begins(zone).plus(LATE));
		}

		/** What was called on it; what was called on another day was not called. */
		List<Skated> called(List<Skated> skated, String zone) {
			Instant begins = begins(zone);
			return skated.stream().map((one) -> one.calledWithin(begins, begins.plus(LATE))).toList();
		}

		private Instant begins(String zone) {
			return this.day.atStartOfDay(ZoneId.of(zone)).toInstant();
		}

	}

	/**
	 * One surface on one day.
	 *
	 * @param surface its name
	 * @param items what happens, in order; what is beside the ice stands where it was
	 * planned
	 */
	public record Ice(String surface, List<Item> items) {

		public Ice {
			items = List.copyOf(items);
		}

	}

	/**
	 * Something that happens.
	 *
	 * @param title empty where kind and segment say it
	 * @param of the segment it is for, {@code null} for none
	 * @param gap how many seconds are kept free before it
	 * @param aside whether the ice goes on meanwhile
	 * @param lines teams, and what is between them
	 */
	public record Item(UUID id, Block.Kind kind, String title, @Nullable Of of, Instant begins, Instant ends, int gap,
			boolean aside, List<Line> lines) {

		public Item {
			lines = List.copyOf(lines);
		}

		static Item of(Laid.LaidBlock laid, Map<UUID, Programme.Segment> segments) {
			Block block = laid.block();
			Programme.Segment segment = (block.segment() != null) ? segments.get(block.segment()) : null;
			return new Item(block.id(), block.kind(), block.title(),
					(segment != null) ? new Of(segment.event(), segment.id(), segment.name(), segment.drawn()) : null,
					laid.begins(), laid.ends(), block.timing().gap(), block.timing().aside(),
					laid.slots().stream().map(Line::of).toList());
		}

		/** The lines of teams alone. */
		public List<Line> teams() {
			return this.lines.stream().filter((line) -> line.team() != null).toList();
		}

		/** Tell whether it is a segment's teams that skate for marks. */
		public boolean isSkated() {
			return this.kind == Block.Kind.SEGMENT;
		}

		/** Tell whether it is for that event. */
		public boolean isOf(UUID event) {
			return this.of != null && this.of.event().id().equals(event);
		}

	}

	/**
	 * The segment that something is for.
	 *
	 * @param drawn whether its teams were in starting order
	 */
	public record Of(Programme.Named event, UUID segment, String name, boolean drawn) {

		/** "Junior, Short programme". */
		public String where() {
			return this.event.name() + ", " + this.name;
		}

	}

	/**
	 * A piece of an item.
	 *
	 * @param team whose it is, {@code null} where it is nobody's
	 */
	public record Line(Laid.SlotKind kind, Instant begins, Instant ends, Programme.@Nullable Team team) {

		static Line of(Laid.Slot slot) {
			return new Line(slot.kind(), slot.begins(), slot.ends(), slot.team());
		}

		/** Tell whether it is that entry's. */
		public boolean isOf(UUID entry) {
			return this.team != null && Objects.equals(this.team.entry(), entry);
		}

		/** How many seconds it takes. */
		public long seconds() {
			return Duration.between(this.begins, this.ends).toSeconds();
		}

	}

}
