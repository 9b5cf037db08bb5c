package rimebook.entries;

import java.util.Optional;

import rimebook.competition.EventId;

/**
 * Has a say before a team is entered into an event. Every bean of this type is asked,
 * inside the transaction of the entry.
 */
@FunctionalInterface
public interface EntryGuard {

	/**
	 * Say why no team may be entered any more, or nothing if one may.
	 * @return a sentence for people, ending with a full stop
	 */
	Optional<String> refusal(EventId event);

}
