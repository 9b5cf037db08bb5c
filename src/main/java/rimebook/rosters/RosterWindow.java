package rimebook.rosters;

import java.time.Instant;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.EventId;
import rimebook.competition.StillOpen;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * When a roster may change, and by whom: freely until the deadline of its event, also by
 * those who manage the team; with a reason after it, by the secretary; and once the
 * competition runs by the referee, with a reason.
 */
@Component
class RosterWindow {

	/** The role of whoever acts by the link of a team. */
	private static final String MANAGER = "manager";

	private final StillOpen stillOpen;

	private final Acts acts;

	RosterWindow(StillOpen stillOpen, Acts acts) {
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Check that a roster of that event may change now; the competition is held.
	 * @return the reason that is to be kept
	 */
	String admit(CompetitionView competition, EventId event, @Nullable Instant deadline, @Nullable String reason,
			Actor actor) {
		this.stillOpen.require(event);
		Optional<Sentence> why = needsReason(competition, deadline);
		if (competition.state() == CompetitionState.RUNNING && actor.role().equals("secretary")) {
			throw new ConflictException("roster-referees", Sentence.of("rosters.referees"));
		}
		if (actor.role().equals(MANAGER)) {
			refusalOfManagers(competition, deadline).ifPresent((refusal) -> {
				throw new ConflictException("roster-closed", refusal);
			});
		}
		String given = Required.optional("reason", reason, 500);
		why.filter((because) -> given.isEmpty()).ifPresent((because) -> {
			throw new RuleViolationException("roster-reason-missing", "reason", because);
		});
		return given;
	}

	/**
	 * Why those who manage a team change its roster themselves no longer, and who does;
	 * empty while they do.
	 */
	Optional<Sentence> refusalOfManagers(CompetitionView competition, @Nullable Instant deadline) {
		return needsReason(competition, deadline).map((late) -> (competition.state() == CompetitionState.RUNNING)
				? Sentence.of("rosters.ask-the-referee") : Sentence.of("rosters.ask-the-secretary"));
	}

	/** Why a change needs a reason now; empty where it needs none. */
	Optional<Sentence> needsReason(CompetitionView competition, @Nullable Instant deadline) {
		if (competition.state() == CompetitionState.RUNNING) {
			return Optional.of(Sentence.of("rosters.reason-on-the-day"));
		}
		return (deadline != null && this.acts.now().isAfter(deadline))
				? Optional.of(Sentence.of("rosters.reason-after-deadline")) : Optional.empty();
	}

}
