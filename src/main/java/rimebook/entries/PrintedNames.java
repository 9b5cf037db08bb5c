package rimebook.entries;

import java.util.Collection;
import java.util.List;

import rimebook.competition.EventId;

/**
 * Tells which names of people public pages may show beside a team. Whoever knows the
 * people implements it and gives out nothing but names that somebody agreed to, so no
 * page can show more.
 */
public interface PrintedNames {

	/**
	 * Those who skate for an entry and agreed that their names are shown, in the order of
	 * the roster; empty where nobody did.
	 */
	List<String> of(EntryId entry);

	/**
	 * A number that goes up with every change of what {@link #of} tells of the entries of
	 * these events; 0 where nobody is on a roster.
	 */
	int changes(Collection<EventId> events);

}
