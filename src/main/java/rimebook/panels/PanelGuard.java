package rimebook.panels;

import java.util.Optional;

import rimebook.competition.EventId;

/**
 * Has a say before a judge takes or leaves a seat. Every bean of this type is asked,
 * inside the transaction of the change.
 */
@FunctionalInterface
public interface PanelGuard {

	/**
	 * Say why the judges of the event must stay as they are now, or nothing if they may
	 * change.
	 * @return a sentence for people, ending with a full stop
	 */
	Optional<String> refusal(EventId event);

}
