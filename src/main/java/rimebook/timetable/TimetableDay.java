package rimebook.timetable;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.RunningOrder;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Estimate;
import rimebook.timetable.plan.Programmed;
import rimebook.timetable.plan.Skated;

/** When the teams of a published timetable are expected, as the ice tells it now. */
@Service
@Transactional(readOnly = true)
public class TimetableDay {

	private final PerformanceRegister performances;

	private final Entries entries;

	private final Competitions competitions;

	private final Clock clock;

	TimetableDay(PerformanceRegister performances, Entries entries, Competitions competitions, Clock clock) {
		this.competitions = competitions;
		this.performances = performances;
		this.entries = entries;
		this.clock = clock;
	}

	/** What is expected now. */
	public Day now(TimetableVersion version) {
		Set<UUID> cancelled = cancelled(version);
		List<Skated> skated = skated(version.timetable()).stream()
			.map((one) -> cancelled.contains(one.segment()) ? one.withoutTurn() : one)
			.toList();
		return new Day(version, Estimate.of(version.timetable(), skated, this.clock.instant()), skated, cancelled,
				this.clock.instant());
	}

	/**
	 * The segments that were promised and do not take place any more: they, or their
	 * events, were cancelled or removed since.
	 */
	private Set<UUID> cancelled(TimetableVersion version) {
		Set<UUID> held = this.competitions.events(version.competition())
			.stream()
			.filter((event) -> !event.isCancelled())
			.flatMap((event) -> event.held().segments().stream())
			.map((segment) -> segment.id().value())
			.collect(Collectors.toSet());
		return version.timetable()
			.items()
			.stream()
			.flatMap((item) -> Stream.ofNullable(item.of()))
			.map(Programmed.Of::segment)
			.filter((segment) -> !held.contains(segment))
			.collect(Collectors.toUnmodifiableSet());
	}

	private List<Skated> skated(Programmed timetable) {
		Set<UUID> gone = timetable.items()
			.stream()
			.flatMap((item) -> Stream.ofNullable(item.of()))
			.map((of) -> of.event().id())
			.distinct()
			.flatMap((event) -> this.entries.ofEvent(new EventId(event)).stream())
			.filter((entry) -> !entry.isEntered())
			.map(EntryView::id)
			.map((entry) -> entry.value())
			.collect(Collectors.toSet());
		return timetable.items()
			.stream()
			.filter((item) -> item.isSkated() && item.of() != null)
			.map((item) -> Objects.requireNonNull(item.of()).segment())
			.distinct()
			.flatMap((segment) -> ofSegment(segment, timetable, gone).stream())
			.toList();
	}

	/** Before a segment is opened, its teams wait, or have withdrawn. */
	private List<Skated> ofSegment(UUID segment, Programmed timetable, Set<UUID> gone) {
		List<PerformanceView> opened = this.performances.ofSegment(new SegmentId(segment));
		if (!opened.isEmpty()) {
			return opened.stream().map((one) -> skated(one, opened)).toList();
		}
		return timetable.items()
			.stream()
			.filter((item) -> item.isSkated() && item.of() != null && item.of().segment().equals(segment))
			.flatMap((item) -> item.teams().stream())
			.flatMap((line) -> Stream.ofNullable(line.team()))
			.map((team) -> new Skated(segment, team.entry(), team.number(), null, null,
					gone.contains(team.entry()) ? Skated.State.GONE : Skated.State.WAITING, false, false))
			.toList();
	}

	private static Skated skated(PerformanceView one, List<PerformanceView> all) {
		return new Skated(one.segment().value(), one.entry().value(), one.startNumber(), one.turn().calledAt(),
				one.course().closedAt(), state(one), one.turn().postponed() || RunningOrder.isPassedOver(one, all),
				one.isAgain());
	}

	/**
	 * A team that was on the ice and let wait has been called, but its turn is to come.
	 */
	private static Skated.State state(PerformanceView one) {
		return switch (one.status()) {
			case WAITING -> Skated.State.WAITING;
			case ON_ICE -> Skated.State.ON_ICE;
			case CLOSED, REOPENED, NOT_FINISHED, SET_ASIDE -> Skated.State.OVER;
			case WITHDRAWN, DISQUALIFIED -> (one.turn().calledAt() != null) ? Skated.State.OVER : Skated.State.GONE;
		};
	}

	/**
	 * A published timetable and what is expected of it.
	 *
	 * @param skated how far the teams are
	 * @param cancelled the segments that do not take place any more
	 * @param at when it was expected
	 */
	public record Day(TimetableVersion version, Estimate estimate, List<Skated> skated, Set<UUID> cancelled,
			Instant at) {

		/**
		 * What is expected of the teams of a segment that are still to come, in order.
		 */
		public List<Estimate.Expected> of(UUID segment) {
			List<UUID> items = this.version.timetable()
				.items()
				.stream()
				.filter((item) -> item.isSkated() && item.of() != null && item.of().segment().equals(segment))
				.map(Programmed.Item::id)
				.toList();
			return this.estimate.expected()
				.stream()
				.filter((one) -> one.entry() != null && items.contains(one.item()))
				.toList();
		}

		/**
		 * Tell whether something is for what does not take place any more: a segment, or
		 * for a ceremony all segments of its event.
		 */
		public boolean isCancelled(Programmed.Item item) {
			Programmed.Of of = item.of();
			if (of == null) {
				return false;
			}
			return this.cancelled.contains(of.segment())
					&& (item.kind() != Block.Kind.CEREMONY || this.version.timetable()
						.items()
						.stream()
						.filter((other) -> other.isSkated() && other.isOf(of.event().id()))
						.flatMap((other) -> Stream.ofNullable(other.of()))
						.allMatch((other) -> this.cancelled.contains(other.segment())));
		}

		/** How far a team is in a segment; {@code WAITING} where nobody knows of it. */
		public Skated.State state(UUID segment, UUID entry) {
			return this.skated.stream()
				.filter((one) -> one.segment().equals(segment) && one.entry().equals(entry))
				.map(Skated::state)
				.findFirst()
				.orElse(Skated.State.WAITING);
		}

		/** When a team was called in a segment, {@code null} where it was not. */
		public @Nullable Instant called(UUID segment, UUID entry) {
			return this.skated.stream()
				.filter((one) -> one.segment().equals(segment) && one.entry().equals(entry))
				.flatMap((one) -> Stream.ofNullable(one.called()))
				.findFirst()
				.orElse(null);
		}

	}

}
