package rimebook.competition;

import rimebook.shared.Actor;

/**
 * An event was made like another; heard within the transaction.
 */
public record EventCopied(EventId original, EventId copy, Actor actor) {
}
