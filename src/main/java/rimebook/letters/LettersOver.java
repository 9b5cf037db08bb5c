package rimebook.letters;

import java.util.UUID;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

/**
 * Empties the letters of a competition on the day on which what is known of its people is
 * deleted, in the same transaction. Whoever deletes is later than letters and says so on
 * the record alone, so it is heard there.
 */
@Component
class LettersOver {

	private static final String DELETED = "retention.deleted";

	private final SentLetters letters;

	LettersOver(SentLetters letters) {
		this.letters = letters;
	}

	@EventListener
	void on(AuditedChange change) {
		if (change.action().equals(DELETED)) {
			this.letters.empty(new CompetitionId(UUID.fromString(change.subjectId())), Actor.system());
		}
	}

}
