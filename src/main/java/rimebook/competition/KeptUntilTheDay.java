package rimebook.competition;

import rimebook.shared.Actor;

/**
 * Something that is kept of a competition until the day on which personal data are
 * deleted. A module that keeps such a thing declares one.
 */
public interface KeptUntilTheDay {

	/**
	 * Delete it, within the transaction in which everything else goes, and say on the
	 * record what was deleted; nothing happens where nothing is kept any more.
	 */
	void delete(CompetitionId competition, Actor actor);

}
