package rimebook.competition.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** The name of the copy of an event. */
record CopyForm(@NotBlank(message = "{competition.event.name.missing}") @Size(max = 120,
		message = "{competition.event.name.long}") String name) {
}
