package rimebook.competition;

import java.util.Optional;

/**
 * Has a say before the method, judges, rule set or segments of an event are changed.
 * Every bean of this type is asked, inside the transaction of the change.
 */
@FunctionalInterface
public interface EventChangeGuard {

	/**
	 * Say why the event must not be changed, or nothing if it may.
	 * @return a sentence for people, ending with a full stop
	 */
	Optional<String> refusal(EventId event);

}
