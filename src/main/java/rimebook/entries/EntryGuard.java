package rimebook.entries;

import java.util.Optional;

import rimebook.competition.EventId;

/**
 * Has a say before a team comes or goes. Every bean of this type is asked, inside the
 * transaction of the act; whoever has nothing to say about an act refuses nothing.
 */
public interface EntryGuard {

	/**
	 * Say why no team may be entered any more, or nothing if one may.
	 * @return a sentence for people, ending with a full stop
	 */
	default Optional<String> refusesEntry(EventId event) {
		return Optional.empty();
	}

	/**
	 * Say why the team cannot withdraw any more and what to do instead, or nothing if it
	 * can.
	 * @return sentences for people, ending with a full stop
	 */
	default Optional<String> refusesWithdrawal(EntryView entry) {
		return Optional.empty();
	}

	/**
	 * Say why the withdrawal cannot simply be taken back and what to do instead, or
	 * nothing if it can.
	 * @return sentences for people, ending with a full stop
	 */
	default Optional<String> refusesReturn(EntryView entry) {
		return Optional.empty();
	}

}
