package rimebook.entries;

import java.util.Optional;

/**
 * Has a say before a team is withdrawn from an event. Every bean of this type is asked,
 * inside the transaction of the withdrawal.
 */
@FunctionalInterface
public interface WithdrawalGuard {

	/**
	 * Say why the team cannot withdraw any more and what to do instead, or nothing if it
	 * can.
	 * @return sentences for people, ending with a full stop
	 */
	Optional<String> refusal(EntryView entry);

}
