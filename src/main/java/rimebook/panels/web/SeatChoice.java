package rimebook.panels.web;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSourceResolvable;

/**
 * What was chosen for an empty seat and not given yet.
 *
 * @param official the identity of the official, empty for nobody
 * @param reason why a bond to a team may be set aside
 * @param fault why the choice was refused, {@code null} if it was not
 */
record SeatChoice(String official, String reason, @Nullable MessageSourceResolvable fault) {

	/** Tell whether the row asks for a reason: after a refusal, or where one is given. */
	public boolean asksForReason() {
		return this.fault != null || !this.reason.isEmpty();
	}

}
