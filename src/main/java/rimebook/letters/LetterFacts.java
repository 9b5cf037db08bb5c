package rimebook.letters;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.wording.Sentence;

/**
 * Tells in letters what only other modules know: what is missing, when a team skates,
 * where a page of it is. Any module may declare a bean; what several tell of a team
 * follows one another in the order of the beans.
 */
@FunctionalInterface
public interface LetterFacts {

	/**
	 * What a letter of that kind tells each of these teams. Asks the database the same
	 * number of questions whatever the number of teams.
	 * @param teams entries of that competition
	 * @return by team, in the order in which it is told; a team of which nothing is told
	 * may be left out
	 */
	Map<EntryId, List<Line>> of(LetterKind kind, CompetitionId competition, Collection<EntryView> teams);

	/** A line of a letter, which is said in the language of whoever reads it. */
	@FunctionalInterface
	interface Line {

		/** The words, one line. */
		String in(Locale language);

		/** A sentence. */
		static Line of(Sentence sentence) {
			return sentence::in;
		}

	}

}
