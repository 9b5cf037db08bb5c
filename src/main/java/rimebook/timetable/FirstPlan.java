package rimebook.timetable;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

import rimebook.competition.DraftCompetition;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Layout;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.PlanRules;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Sheet;

/**
 * Makes a first plan from what a competition has: on each day the doors open and the
 * judges meet, first segments come before second ones, a break at noon, an event's
 * ceremony after its last segment. What does not fit before the rink closes goes on with
 * the next day; on the last one it stays. All lengths and times are common practice and
 * meant to be changed.
 */
final class FirstPlan {

	static final LocalTime BEGINS = LocalTime.of(8, 0);

	static final LocalTime CLOSES = LocalTime.of(21, 0);

	private static final LocalTime NOON = LocalTime.of(12, 0);

	private final Programme programme;

	private final Supplier<UUID> ids;

	private final List<LocalDate> days;

	private Plan plan;

	private int day;

	private boolean rested;

	private FirstPlan(Programme programme, Plan empty, Supplier<UUID> ids) {
		this.programme = programme;
		this.ids = ids;
		this.plan = empty;
		this.days = empty.days();
	}

	/** The days of a competition on one ice surface, with nothing on them. */
	static Plan empty(DraftCompetition competition, String surface) {
		List<Sheet> sheets = competition.firstDay()
			.datesUntil(competition.lastDay().plusDays(1))
			.map((day) -> new Sheet(new Plan.Place(day, 0), BEGINS, CLOSES, List.of()))
			.toList();
		return new Plan(List.of(surface), sheets, List.of(), PlanRules.USUAL);
	}

	/**
	 * Fill an empty plan, by its rules and on the first surface of its days.
	 * @param empty has one day at least
	 */
	static Plan of(Programme programme, Plan empty, Supplier<UUID> ids) {
		return new FirstPlan(programme, empty, ids).fill();
	}

	private Plan fill() {
		begin();
		Set<UUID> over = new HashSet<>();
		List<Programme.Segment> order = inOrder();
		for (int at = 0; at < order.size(); at++) {
			Programme.Segment segment = order.get(at);
			skate(segment);
			boolean last = order.subList(at + 1, order.size())
				.stream()
				.noneMatch((later) -> later.event().equals(segment.event()));
			if (last && over.add(segment.event().id())) {
				add(Block.Kind.CEREMONY, 15, Block.Part.all(segment.id()));
			}
		}
		return this.plan;
	}

	/** All first segments, then all second ones, and so on. */
	private List<Programme.Segment> inOrder() {
		List<Programme.Segment> left = new ArrayList<>(this.programme.segments());
		List<Programme.Segment> order = new ArrayList<>();
		while (!left.isEmpty()) {
			Set<UUID> seen = new HashSet<>();
			List<Programme.Segment> round = left.stream().filter((segment) -> seen.add(segment.event().id())).toList();
			order.addAll(round);
			left.removeAll(round);
		}
		return order;
	}

	private void begin() {
		this.rested = false;
		add(Block.Kind.DOORS, 30, null);
		add(Block.Kind.MEETING, 15, null);
	}

	private void skate(Programme.Segment segment) {
		if (!this.rested && clock().isAfter(NOON)) {
			add(Block.Kind.BREAK, 45, null);
			this.rested = true;
		}
		Plan before = this.plan;
		add(Block.Kind.SEGMENT, 0, Block.Part.all(segment.id()));
		if (this.day + 1 < this.days.size() && isTooLate()) {
			this.plan = before;
			this.day++;
			begin();
			add(Block.Kind.SEGMENT, 0, Block.Part.all(segment.id()));
		}
	}

	private void add(Block.Kind kind, int minutes, Block.@Nullable Part part) {
		Block block = new Block(this.ids.get(), place(), kind, "", minutes * 60, Block.Timing.NEXT, part);
		this.plan = this.plan.with(block, Integer.MAX_VALUE);
	}

	private Plan.Place place() {
		return new Plan.Place(this.days.get(this.day), 0);
	}

	private LocalTime clock() {
		return lastOfDay().ends().atZone(this.programme.zone()).toLocalTime();
	}

	private boolean isTooLate() {
		LocalTime closes = this.plan.sheet(place()).orElseThrow().closes();
		return lastOfDay().ends().isAfter(place().day().atTime(closes).atZone(this.programme.zone()).toInstant());
	}

	private Laid.LaidBlock lastOfDay() {
		return Layout.of(this.plan, this.programme)
			.blocks()
			.stream()
			.filter((laid) -> laid.block().place().equals(place()))
			.reduce((earlier, later) -> later)
			.orElseThrow();
	}

}
