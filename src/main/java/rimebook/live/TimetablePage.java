package rimebook.live;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.timetable.TimetableDay;
import rimebook.timetable.plan.Estimate;
import rimebook.timetable.plan.Pace;
import rimebook.timetable.plan.Programmed;
import rimebook.timetable.plan.Skated;

/**
 * A published timetable with what is expected, laid out for a page.
 *
 * @param days all days on which something happens
 * @param day the one that is shown, {@code null} where there is none
 * @param ice its surfaces
 */
record TimetablePage(TimetableDay.Day now, List<LocalDate> days, @Nullable LocalDate day, List<IceRows> ice) {

	/** The day asked for, or the one that it is, or the next, or the last. */
	static TimetablePage of(TimetableDay.Day now, @Nullable LocalDate asked, ZoneId zone) {
		List<LocalDate> days = now.version().timetable().days().stream().map(Programmed.Day::day).toList();
		LocalDate today = now.at().atZone(zone).toLocalDate();
		LocalDate shown = (asked != null) ? asked
				: days.stream()
					.filter((day) -> !day.isBefore(today))
					.findFirst()
					.orElse(days.isEmpty() ? null : days.get(days.size() - 1));
		return new TimetablePage(now, days, shown, ice(now, shown));
	}

	private static List<IceRows> ice(TimetableDay.Day now, @Nullable LocalDate shown) {
		List<IceRows> rows = new ArrayList<>();
		int at = 0;
		for (Programmed.Day day : now.version().timetable().days()) {
			for (Programmed.Ice ice : day.ice()) {
				if (day.day().equals(shown)) {
					rows.add(new IceRows(ice.surface(), now.estimate().paces().getOrDefault(at, Pace.PLANNED),
							ice.items().stream().map((item) -> ItemRow.of(item, now)).toList()));
				}
				at++;
			}
		}
		return rows;
	}

	/** Every time that a team has, on all days and surfaces, by the clock. */
	static List<TeamTime> timesOf(TimetableDay.Day now, UUID entry) {
		return now.version()
			.timetable()
			.items()
			.stream()
			.flatMap((item) -> ItemRow.of(item, now)
				.teams()
				.stream()
				.filter((row) -> row.line().isOf(entry))
				.map((row) -> new TeamTime(item, row)))
			.sorted(Comparator.comparing((TeamTime time) -> time.row().line().begins()))
			.toList();
	}

	/** Tell whether that day has anything. */
	boolean has(LocalDate asked) {
		return this.days.contains(asked);
	}

	/**
	 * A surface.
	 */
	record IceRows(String surface, Pace pace, List<ItemRow> items) {
	}

	/**
	 * Something that happens.
	 *
	 * @param expected when it is expected as a whole, {@code null} where nothing more is
	 * to be said
	 * @param cancelled whether it is for what does not take place any more
	 */
	record ItemRow(Programmed.Item item, Estimate.@Nullable Expected expected, boolean cancelled, List<TeamRow> lines) {

		static ItemRow of(Programmed.Item item, TimetableDay.Day now) {
			return new ItemRow(item, now.estimate().of(item.id()).orElse(null), now.isCancelled(item),
					item.lines().stream().map((line) -> TeamRow.of(item, line, now)).toList());
		}

		List<TeamRow> teams() {
			return this.lines.stream().filter((row) -> row.line().team() != null).toList();
		}

		/** Tell whether teams stand in the order of their entry. */
		public boolean isUndrawn() {
			return this.item.isSkated() && this.item.of() != null && !this.item.of().drawn();
		}

	}

	/**
	 * A team, or what is between two.
	 *
	 * @param state how far the team is, {@code null} where nobody skates for marks
	 * @param called when it was called, {@code null} where it was not
	 * @param expected when it is expected, {@code null} where nothing more is to be said
	 */
	record TeamRow(Programmed.Line line, Skated.@Nullable State state, @Nullable Instant called,
			Estimate.@Nullable Expected expected) {

		static TeamRow of(Programmed.Item item, Programmed.Line line, TimetableDay.Day now) {
			if (line.team() == null || !item.isSkated() || item.of() == null) {
				return new TeamRow(line, null, null, null);
			}
			UUID segment = item.of().segment();
			UUID entry = line.team().entry();
			return new TeamRow(line, now.state(segment, entry), now.called(segment, entry),
					now.estimate().of(item.id(), entry).orElse(null));
		}

		public boolean isOnIce() {
			return this.state == Skated.State.ON_ICE;
		}

		public boolean isOver() {
			return this.state == Skated.State.OVER;
		}

		/** Tell whether it is a team that skates for marks and is not done. */
		boolean isToCome() {
			return this.state == Skated.State.WAITING || this.state == Skated.State.ON_ICE;
		}

		public boolean isGone() {
			return this.state == Skated.State.GONE;
		}

		/** Tell whether there is anything to say beside its time. */
		public boolean isTold() {
			return isOnIce() || isOver() || isGone() || this.expected != null;
		}

		/** The class of its mark in the style sheet. */
		public String look() {
			return isOnIce() ? "now" : isGone() ? "stop" : isOver() ? "done" : "";
		}

	}

	/** A time of a team with what it is for. */
	record TeamTime(Programmed.Item item, TeamRow row) {

		/** The team's name as it was published. */
		String team() {
			return Stream.ofNullable(this.row.line().team()).map((team) -> team.name()).findFirst().orElse("");
		}

		/** On which day it is, at the rink. */
		public LocalDate day(ZoneId zone) {
			return this.row.line().begins().atZone(zone).toLocalDate();
		}

	}

}
