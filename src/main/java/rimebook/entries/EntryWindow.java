package rimebook.entries;

import java.util.Optional;
import java.util.function.Function;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.EventId;
import rimebook.competition.StillOpen;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * When teams may come and go: freely while entries are open, with a reason until the
 * competition is final, and as long as nobody else refuses.
 */
@Component
class EntryWindow {

	private final ObjectProvider<EntryGuard> guards;

	private final StillOpen stillOpen;

	EntryWindow(ObjectProvider<EntryGuard> guards, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.guards = guards;
	}

	/** Check that a team may be entered now; returns the late reason to be kept. */
	String admit(CompetitionView competition, EventId event, String lateReason) {
		this.stillOpen.require(event);
		guarded(event).ifPresent((refusal) -> {
			throw new ConflictException("entry-refused", refusal);
		});
		return switch (competition.state()) {
			case ENTRIES_OPEN -> "";
			case ENTRIES_CLOSED, RUNNING -> late(lateReason);
			case PLANNED, FINAL, ARCHIVED -> throw new ConflictException("entries-not-open", shut(competition));
		};
	}

	/** Check that teams may be entered freely now, as an import needs. */
	void checkOpen(CompetitionView competition) {
		if (competition.state() != CompetitionState.ENTRIES_OPEN) {
			throw new ConflictException("entries-not-open",
					Sentence.of("entries.import.needs-open-entries", competition.state().spoken()));
		}
	}

	/** Check that a team may still withdraw. */
	void checkLeave(EventId event) {
		this.stillOpen.require(event);
	}

	/** Check that nobody refuses the withdrawal of a team. */
	void checkWithdrawal(EntryView entry) {
		first((guard) -> guard.refusesWithdrawal(entry)).ifPresent((no) -> {
			throw new ConflictException("withdrawal-refused", no);
		});
	}

	/** Check that nobody refuses that the withdrawal of a team is taken back. */
	void checkReturn(EntryView entry) {
		refusal(entry).ifPresent((no) -> {
			throw new ConflictException("return-refused", no);
		});
	}

	/** The reason why a withdrawal cannot simply be taken back, if there is one. */
	Optional<Sentence> returnRefusal(EntryView entry) {
		return this.stillOpen.refusal(entry.event()).map(RimebookException::sentence).or(() -> refusal(entry));
	}

	private Optional<Sentence> refusal(EntryView entry) {
		return first((guard) -> guard.refusesReturn(entry));
	}

	/** The reason why nobody may be entered into that event any more, if there is one. */
	Optional<Sentence> refusal(EventId event) {
		return this.stillOpen.refusal(event).map(RimebookException::sentence).or(() -> guarded(event));
	}

	/** The reason why nobody may be entered there from a file, if there is one. */
	Optional<Sentence> importRefusal(EventId event) {
		return refusal(event).or(() -> first((guard) -> guard.refusesImport(event)));
	}

	/**
	 * Why the entry does not go over into another event as it is, if somebody says so.
	 */
	Optional<Sentence> staysInEvent(EntryView entry) {
		return first((guard) -> guard.staysInEvent(entry));
	}

	private Optional<Sentence> guarded(EventId event) {
		return first((guard) -> guard.refusesEntry(event));
	}

	private Optional<Sentence> first(Function<EntryGuard, Optional<Sentence>> asked) {
		return this.guards.orderedStream().flatMap((guard) -> asked.apply(guard).stream()).findFirst();
	}

	/** The reason why nobody may be entered now, not even late, if there is one. */
	Optional<Sentence> refusal(CompetitionView competition, EventId event) {
		return (competition.state() != CompetitionState.PLANNED) ? refusal(event) : Optional.of(shut(competition));
	}

	/** Refuse unless there is a reason. */
	static String late(String reason) {
		if (reason.isEmpty()) {
			throw new RuleViolationException("late-reason-missing", "lateReason",
					Sentence.of("entries.late-reason-missing"));
		}
		return reason;
	}

	private static Sentence shut(CompetitionView competition) {
		return Sentence.of("entries.window-shut", competition.state().spoken());
	}

}
