package rimebook.arrival.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * Why others were on the ice than was kept.
 *
 * @param seen the number of what was looked at
 */
record LineupForm(@NotBlank(message = "{arrival.lineup.reason.missing}") @Size(max = 300,
		message = "{arrival.lineup.reason.long}") String reason, int seen) {
}
