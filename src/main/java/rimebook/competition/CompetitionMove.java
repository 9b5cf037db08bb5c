package rimebook.competition;

import org.jspecify.annotations.Nullable;

/**
 * A move that a competition could make now.
 *
 * @param next the state it would be in
 * @param refusal a sentence saying why it may not, {@code null} if it may
 */
public record CompetitionMove(CompetitionState next, @Nullable String refusal) {

	/** Tell whether the move would be accepted. */
	public boolean isAllowed() {
		return this.refusal == null;
	}

}
