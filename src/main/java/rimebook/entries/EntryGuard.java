package rimebook.entries;

import java.util.Optional;

import rimebook.competition.EventId;
import rimebook.wording.Sentence;

/**
 * Has a say before a team comes or goes. Every bean of this type is asked, inside the
 * transaction of the act; whoever has nothing to say about an act refuses nothing.
 */
public interface EntryGuard {

	/**
	 * Say why no team may be entered any more, or nothing if one may.
	 * @return a whole sentence
	 */
	default Optional<Sentence> refusesEntry(EventId event) {
		return Optional.empty();
	}

	/**
	 * Say why no teams may be entered from a file any more, or nothing if they may; asked
	 * beside {@link #refusesEntry}.
	 * @return whole sentences
	 */
	default Optional<Sentence> refusesImport(EventId event) {
		return Optional.empty();
	}

	/**
	 * Say why the entry cannot go over into another event as it is, or nothing if it can.
	 * Where somebody says so, the team withdraws and is entered there anew.
	 * @return a whole sentence
	 */
	default Optional<Sentence> staysInEvent(EntryView entry) {
		return Optional.empty();
	}

	/**
	 * Say why the team cannot withdraw any more and what to do instead, or nothing if it
	 * can.
	 * @return whole sentences
	 */
	default Optional<Sentence> refusesWithdrawal(EntryView entry) {
		return Optional.empty();
	}

	/**
	 * Say why the withdrawal cannot simply be taken back and what to do instead, or
	 * nothing if it can.
	 * @return whole sentences
	 */
	default Optional<Sentence> refusesReturn(EntryView entry) {
		return Optional.empty();
	}

}
