package rimebook.draw;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

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
		this.stillOpen.require(segment);
		CompetitionView competition = this.competitions.competition(event.competition());
		if (!DRAWABLE.contains(competition.state())) {
			throw new ConflictException("draw-not-now", "The competition is '" + competition.state().inWords()
					+ "'; a starting order is drawn after the entries are closed and before the results are final.");
		}
		this.guards.orderedStream()
			.flatMap((guard) -> guard.refusal(segment).stream())
			.findFirst()
			.ifPresent((refusal) -> {
				throw new ConflictException("draw-too-late", refusal);
			});
	}

	void checkMethod(EventView event, StartingOrderDraw.Order order) {
		if (!methods(event, order.segment()).contains(order.method())) {
			throw new RuleViolationException("draw-method-not-fitting", "method",
					"The first segment of an event is drawn over the whole field: there is no standing yet.");
		}
	}

	void checkReason(int number, StartingOrderDraw.Order order) {
		if (number > 1 && order.reason().isEmpty()) {
			throw new RuleViolationException("draw-reason-missing", "reason",
					"This segment has a starting order already; say why it is drawn again.");
		}
	}

}
