package rimebook.letters;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/**
 * Tells what has become different since letters were written. Any module whose facts get
 * into letters may declare a bean.
 */
@FunctionalInterface
public interface SinceLetters {

	/**
	 * What letters of that kind tell otherwise than it is now, in one sentence.
	 * @param written when each team was written to last; never empty
	 * @return empty where they are right, or are about something else
	 */
	Optional<Sentence> since(LetterKind kind, CompetitionId competition, Map<EntryId, Instant> written);

}
