package rimebook.draw;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** When a segment may be drawn, and how. */
@Component
class DrawConditions {

	private static final Set<CompetitionState> DRAWABLE = EnumSet.of(CompetitionState.ENTRIES_CLOSED,
			CompetitionState.RUNNING);

	private static final List<DrawMethod> FIRST_SEGMENT = List.of(DrawMethod.WHOLE_FIELD);

	private static final List<DrawMethod> LATER_SEGMENT = List.of(DrawMethod.GROUPS_FROM_STANDING,
			DrawMethod.REVERSE_STANDING, DrawMethod.WHOLE_FIELD);

	private final Competitions competitions;

	private final ObjectProvider<StartingOrderDraw.Guard> guards;

	private final StillOpen stillOpen;

	DrawConditions(Competitions competitions, ObjectProvider<StartingOrderDraw.Guard> guards, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.competitions = competitions;
		this.guards = guards;
	}

	List<DrawMethod> methods(EventView event, SegmentId segment) {
		return event.previousSegments(segment).isEmpty() ? FIRST_SEGMENT : LATER_SEGMENT;
	}

	/**
	 * Refuse at the end, while entries are open and once a guard says that it is too
	 * late.
	 */
	void checkTime(EventView event, SegmentId segment) {
		check(event, segment, (guard) -> guard.refusal(segment));
	}

	/** The same for teams that follow those that were drawn. */
	void checkTimeToAdd(EventView event, SegmentId segment) {
		check(event, segment, (guard) -> guard.refusesAddition(segment));
	}

	private void check(EventView event, SegmentId segment,
			Function<StartingOrderDraw.Guard, Optional<Sentence>> asked) {
		this.stillOpen.require(segment);
		CompetitionView competition = this.competitions.competition(event.competition());
		if (!DRAWABLE.contains(competition.state())) {
			throw new ConflictException("draw-not-now", Sentence.of("draw.not-now", competition.state().spoken()));
		}
		this.guards.orderedStream().flatMap((guard) -> asked.apply(guard).stream()).findFirst().ifPresent((refusal) -> {
			throw new ConflictException("draw-too-late", refusal);
		});
	}

	/** What drawing again would change for others; {@code null} for nothing. */
	@Nullable Sentence caution(SegmentId segment) {
		return this.guards.orderedStream().flatMap((guard) -> guard.caution(segment).stream()).findFirst().orElse(null);
	}

	void checkMethod(EventView event, StartingOrderDraw.Order order) {
		if (!methods(event, order.segment()).contains(order.method())) {
			throw new RuleViolationException("draw-method-not-fitting", "method",
					Sentence.of("draw.method-not-fitting"));
		}
	}

	void checkReason(int number, StartingOrderDraw.Order order) {
		if (number > 1 && order.reason().isEmpty()) {
			throw new RuleViolationException("draw-reason-missing", "reason", Sentence.of("draw.reason-missing"));
		}
	}

}
