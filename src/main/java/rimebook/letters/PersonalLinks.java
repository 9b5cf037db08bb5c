package rimebook.letters;

import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;

/**
 * Makes the personal links that letters take along. Whoever lets a team's managers in
 * implements it. A link is an address that opens one team's page without a password, so
 * nothing here keeps one: it is made for the moment in which the letter is handed over or
 * laid out.
 */
public interface PersonalLinks {

	/** How each of these addresses begins. */
	String base();

	/**
	 * Refuse unless links of a competition can be given at all.
	 * @throws RuleViolationException {@code competition-over}
	 */
	void require(CompetitionId competition);

	/** The teams that have a link that opens their page now. */
	Set<EntryId> open(CompetitionId competition);

	/**
	 * Make a link for a letter that is about to be handed over. The team's link before
	 * holds until this one is known to have {@link #arrived}, or is used; what the same
	 * letter took along before is void.
	 * @return the whole address
	 * @throws RimebookException saying why the team is given none
	 */
	String setOut(Errand errand);

	/** The mail server took the letter: its link is the team's from now on. */
	void arrived(UUID letter);

	/** The mail server did not take the letter: its link opens nothing. */
	void lost(UUID letter);

	/**
	 * Give links to teams for letters on paper, except to those whose link is still
	 * shown, and to those that do not take part any more.
	 * @return how many
	 * @throws RuleViolationException {@code competition-over}
	 */
	int give(CompetitionId competition, Collection<EntryId> teams, Actor actor);

	/** The whole addresses that are still shown, by team. */
	Map<EntryId, String> shown(CompetitionId competition);

	/** What became of the link that a letter to a team took along. */
	Fate fate(CompetitionId competition, EntryId team, UUID letter);

	/**
	 * That a letter is to take a link along.
	 *
	 * @param by who had it sent
	 * @param at when
	 */
	record Errand(UUID letter, CompetitionId competition, EntryId team, String by, Instant at) {
	}

	/** What became of a link. */
	enum Fate {

		/** Nobody knows yet; it opens the page as soon as it is used. */
		UNDER_WAY,

		/** It opens the page, and nobody did so yet. */
		GOOD,

		/** It opens the page, and did so. */
		OPENED,

		/** Somebody shut it. */
		SHUT,

		/** The competition is over. */
		EXPIRED,

		/** It opens nothing: it did not go, another took its place, or it was shut. */
		VOID

	}

}
