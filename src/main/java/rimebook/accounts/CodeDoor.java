package rimebook.accounts;

import java.time.Duration;

/**
 * Whether an address may try a seat code now.
 *
 * @param pause how long it has to wait, zero if not at all
 * @param turn changes with each stop and each freeing: failures are counted anew from
 * there
 */
public record CodeDoor(Duration pause, String turn) {
}
