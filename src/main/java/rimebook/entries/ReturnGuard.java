package rimebook.entries;

import java.util.Optional;

/**
 * Has a say before a withdrawal is taken back. Every bean of this type is asked, inside
 * the transaction of that act.
 */
@FunctionalInterface
public interface ReturnGuard {

	/**
	 * Say why the withdrawal cannot simply be taken back and what to do instead, or
	 * nothing if it can.
	 * @return sentences for people, ending with a full stop
	 */
	Optional<String> refusal(EntryView entry);

}
