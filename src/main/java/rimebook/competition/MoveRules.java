package rimebook.competition;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** Asks everybody who has a say in a move of the competition or a change of an event. */
@Component
class MoveRules {

	private final ObjectProvider<CompetitionMoveGuard> moveGuards;

	private final ObjectProvider<Competitions.EventChangeGuard> changeGuards;

	private final ObjectProvider<CancellationGuard> cancellationGuards;

	MoveRules(ObjectProvider<CompetitionMoveGuard> moveGuards,
			ObjectProvider<Competitions.EventChangeGuard> changeGuards,
			ObjectProvider<CancellationGuard> cancellationGuards) {
		this.moveGuards = moveGuards;
		this.changeGuards = changeGuards;
		this.cancellationGuards = cancellationGuards;
	}

	List<Competitions.Move> moves(CompetitionView competition) {
		return competition.state()
			.nextStates()
			.stream()
			.map((next) -> new Competitions.Move(next, refusal(competition, next)))
			.toList();
	}

	void holdStill(CompetitionView competition, CompetitionState next) {
		this.moveGuards.orderedStream().forEach((guard) -> guard.holdStill(competition, next));
	}

	void checkMove(CompetitionView competition, CompetitionState next) {
		Sentence refusal = refusal(competition, next);
		if (refusal != null) {
			throw new ConflictException("competition-move", "state", refusal);
		}
	}

	void checkChange(EventId event) {
		this.changeGuards.orderedStream()
			.flatMap((guard) -> guard.refusal(event).stream())
			.findFirst()
			.ifPresent((refusal) -> {
				throw new ConflictException("event-change", refusal);
			});
	}

	/** Refuse to let segments go on which something hangs, by which act ever. */
	void checkRemoval(EventView event, List<SegmentView> segments) {
		this.cancellationGuards.orderedStream()
			.flatMap((guard) -> guard.againstRemoving(event, segments).stream())
			.findFirst()
			.ifPresent((refusal) -> {
				throw new ConflictException("removal-refused", refusal);
			});
	}

	private @Nullable Sentence refusal(CompetitionView competition, CompetitionState next) {
		return this.moveGuards.orderedStream()
			.flatMap((guard) -> guard.refusal(competition, next).stream())
			.findFirst()
			.orElse(null);
	}

}
