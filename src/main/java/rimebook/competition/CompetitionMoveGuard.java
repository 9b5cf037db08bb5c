package rimebook.competition;

import java.util.Optional;

import rimebook.wording.Sentence;

/**
 * Has a say before a competition moves to another state. Every bean of this type is
 * asked, inside the transaction of the move.
 */
@FunctionalInterface
public interface CompetitionMoveGuard {

	/**
	 * Take hold of what the answer rests on, so that nothing contradicts the move while
	 * it is made. Asked before the answer, and only when the move is really made.
	 */
	default void holdStill(CompetitionView competition, CompetitionState next) {
	}

	/**
	 * Say why the competition must not move, or nothing if it may.
	 * @param competition as it is before the move
	 * @param next the state asked for, one that may follow
	 * @return a whole sentence
	 */
	Optional<Sentence> refusal(CompetitionView competition, CompetitionState next);

}
