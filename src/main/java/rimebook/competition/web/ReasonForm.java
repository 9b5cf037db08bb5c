package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

/** Why something is done that everybody will read, or that leads back from the end. */
record ReasonForm(@Nullable Integer version, @Nullable String reason) {

	ReasonForm {
		version = (version != null) ? version : 0;
		reason = (reason != null) ? reason : "";
	}

}
