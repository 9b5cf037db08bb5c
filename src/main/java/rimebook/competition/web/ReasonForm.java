package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

/** Why something is done that everybody will read, or that leads back from the end. */
record ReasonForm(@Nullable Integer version, @Nullable String reason) {

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : 0;
	}

	@Override
	public String reason() {
		return (this.reason != null) ? this.reason : "";
	}

}
