package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Lays out one surface on one day. Used once. */
final class SheetLayout {

	private final Plan plan;

	private final Sheet sheet;

	private final ZoneId zone;

	private final Map<UUID, Programme.Segment> segments;

	private final List<Warning> warnings;

	/** When the ice is resurfaced at a fixed time, what is still to come. */
	private final Deque<Instant> fixed = new ArrayDeque<>();

	/** Where the ice is free. */
	private Instant cursor;

	/** How many seconds people have skated since the ice was resurfaced. */
	private long worn;

	private List<Laid.Slot> slots = new ArrayList<>();

	SheetLayout(Plan plan, Sheet sheet, ZoneId zone, Map<UUID, Programme.Segment> segments, List<Warning> warnings) {
		this.plan = plan;
		this.sheet = sheet;
		this.zone = zone;
		this.segments = segments;
		this.warnings = warnings;
		this.cursor = at(sheet.begins());
		sheet.resurfacings()
			.stream()
			.map(this::at)
			.filter((time) -> !time.isBefore(this.cursor))
			.forEach(this.fixed::add);
	}

	Laid.LaidSheet lay() {
		List<Laid.LaidBlock> blocks = this.plan.on(this.sheet.place()).stream().map(this::lay).toList();
		blocks.stream()
			.filter((laid) -> laid.ends().isAfter(closes()))
			.findFirst()
			.ifPresent((laid) -> warn(Warning.Kind.CLOSING, laid.block(), laid.ends(),
					Sentence.of("timetable.warning.closing", name(laid.block()), clock(laid.ends()), clock(closes()))));
		return new Laid.LaidSheet(this.sheet, blocks);
	}

	private Laid.LaidBlock lay(Block block) {
		this.slots = new ArrayList<>();
		if (block.timing().aside()) {
			LocalTime anchor = block.timing().anchor();
			Instant begins = (anchor != null) ? anchored(anchor) : this.cursor;
			return new Laid.LaidBlock(block, begins, begins.plusSeconds(block.seconds()), List.of());
		}
		idleUntil(begins(block));
		Instant begins = begins(block);
		warnIfOverrun(block, begins);
		this.cursor = begins;
		fill(block);
		return new Laid.LaidBlock(block, begins, this.cursor, this.slots);
	}

	/** As soon as it can; a gap counts from the end of what is before. */
	private Instant begins(Block block) {
		Instant soonest = this.cursor.plusSeconds(block.timing().gap());
		LocalTime anchor = block.timing().anchor();
		return (anchor != null && anchored(anchor).isAfter(soonest)) ? anchored(anchor) : soonest;
	}

	/** While nothing happens the ice is resurfaced at its fixed times. */
	private void idleUntil(Instant begins) {
		while (!this.fixed.isEmpty() && this.fixed.peek().isBefore(begins)) {
			Instant time = this.fixed.remove();
			if (time.isAfter(this.cursor)) {
				this.cursor = time;
			}
			resurface();
		}
	}

	private void warnIfOverrun(Block block, Instant begins) {
		LocalTime anchor = block.timing().anchor();
		if (anchor != null && begins.isAfter(anchored(anchor))) {
			warn(Warning.Kind.OVERRUN, block, begins, Sentence.of("timetable.warning.overrun", name(block),
					clock(begins), clock(anchored(anchor)), minutes(Duration.between(anchored(anchor), begins))));
		}
	}

	private void fill(Block block) {
		switch (block.kind()) {
			case SEGMENT -> skate(block);
			case PRACTICE -> practise(block);
			case RESURFACING -> {
				this.cursor = this.cursor.plusSeconds(block.seconds());
				this.worn = 0;
			}
			default -> this.cursor = this.cursor.plusSeconds(block.seconds());
		}
	}

	private void skate(Block block) {
		Programme.Segment segment = segment(block);
		if (segment == null) {
			return;
		}
		PlanRules.TeamTime times = this.plan.rules().team();
		int rotation = times.rotation(segment.seconds(), segment.points());
		List<Programme.Team> teams = teams(block, segment);
		boolean together = times.warmUp() == PlanRules.WarmUp.GROUP;
		for (int at = 0; at < teams.size(); at++) {
			Programme.Team team = teams.get(at);
			boolean first = together && (at == 0 || teams.get(at - 1).group() != team.group());
			boolean within = together && !first;
			int warmUp = first ? times.warmUpSeconds() : 0;
			resurfaceIfDue(first ? warmUp + rotation * sizeOfGroup(teams, at) : rotation, within);
			if (first) {
				use(Laid.SlotKind.WARM_UP, warmUp, null);
			}
			use(Laid.SlotKind.TEAM, rotation, team);
			warnIfWorn(block);
		}
	}

	private static int sizeOfGroup(List<Programme.Team> teams, int at) {
		return (int) teams.stream().filter((team) -> team.group() == teams.get(at).group()).count();
	}

	private void practise(Block block) {
		Programme.Segment segment = segment(block);
		if (segment == null) {
			resurfaceIfDue(block.seconds(), false);
			this.cursor = this.cursor.plusSeconds(block.seconds());
			this.worn += block.seconds();
			warnIfWorn(block);
			return;
		}
		for (Programme.Team team : teams(block, segment)) {
			resurfaceIfDue(block.seconds(), false);
			use(Laid.SlotKind.TEAM, block.seconds(), team);
			warnIfWorn(block);
		}
	}

	/**
	 * Resurface before what comes next, if a fixed time has come or the ice would be worn
	 * too much.
	 * @param seconds how long people would skate until the next chance
	 * @param within whether nothing may come between, since a group has warmed up
	 */
	private void resurfaceIfDue(int seconds, boolean within) {
		if (within) {
			return;
		}
		PlanRules.IceCare ice = this.plan.rules().ice();
		boolean due = false;
		while (!this.fixed.isEmpty() && !this.fixed.peek().isAfter(this.cursor)) {
			this.fixed.remove();
			due = true;
		}
		if (due || (ice.byItself() && this.worn > 0 && this.worn + seconds > ice.after())) {
			resurface();
		}
	}

	private void resurface() {
		Instant ends = this.cursor.plusSeconds(this.plan.rules().ice().takes());
		this.slots.add(new Laid.Slot(Laid.SlotKind.RESURFACING, this.cursor, ends, null));
		this.cursor = ends;
		this.worn = 0;
	}

	private void use(Laid.SlotKind kind, int seconds, Programme.@Nullable Team team) {
		Instant ends = this.cursor.plusSeconds(seconds);
		this.slots.add(new Laid.Slot(kind, this.cursor, ends, team));
		this.cursor = ends;
		this.worn += seconds;
	}

	private void warnIfWorn(Block block) {
		if (this.worn > this.plan.rules().ice().after() && !isWarned(Warning.Kind.ICE, block)) {
			warn(Warning.Kind.ICE, block, this.cursor,
					Sentence.of("timetable.warning.ice", name(block), clock(this.cursor),
							minutes(Duration.ofSeconds(this.worn)),
							minutes(Duration.ofSeconds(this.plan.rules().ice().after()))));
		}
	}

	private boolean isWarned(Warning.Kind kind, Block block) {
		return this.warnings.stream()
			.anyMatch((warning) -> warning.kind() == kind && block.id().equals(warning.block()));
	}

	private void warn(Warning.Kind kind, Block block, Instant at, Sentence why) {
		this.warnings.add(new Warning(kind, block.id(), at, why));
	}

	private Programme.@Nullable Segment segment(Block block) {
		return (block.segment() != null) ? this.segments.get(block.segment()) : null;
	}

	private static List<Programme.Team> teams(Block block, Programme.Segment segment) {
		List<Programme.Team> teams = new ArrayList<>();
		for (int place = 1; place <= segment.teams().size(); place++) {
			if (block.part() != null && block.part().has(place)) {
				teams.add(segment.teams().get(place - 1));
			}
		}
		return teams;
	}

	private Sentence name(Block block) {
		return BlockName.of(block, this.segments);
	}

	private Instant closes() {
		LocalDate day = this.sheet.place().day();
		boolean sameDay = this.sheet.closes().isAfter(this.sheet.begins());
		return (sameDay ? day : day.plusDays(1)).atTime(this.sheet.closes()).atZone(this.zone).toInstant();
	}

	private Instant at(LocalTime time) {
		return this.sheet.place().day().atTime(time).atZone(this.zone).toInstant();
	}

	/** An anchor earlier than the day's begin is meant after midnight. */
	private Instant anchored(LocalTime time) {
		boolean nextDay = time.isBefore(this.sheet.begins()) && !this.sheet.closes().isAfter(this.sheet.begins());
		LocalDate day = this.sheet.place().day();
		return (nextDay ? day.plusDays(1) : day).atTime(time).atZone(this.zone).toInstant();
	}

	private String clock(Instant instant) {
		return Clocks.time(instant, this.zone);
	}

	private static int minutes(Duration duration) {
		return Clocks.minutes(duration);
	}

}
