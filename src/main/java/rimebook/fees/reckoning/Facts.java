package rimebook.fees.reckoning;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * What became of an entry. One that came back after it had withdrawn is entered as of
 * then; one whose withdrawal was taken back never left.
 *
 * @param entered when it was accepted
 * @param afterClosing whether entries had closed by then
 * @param withdrawn when it withdrew, {@code null} while it takes part
 * @param skaters how many are to be on the ice
 * @param cancelled whether its event does not take place
 */
public record Facts(Instant entered, boolean afterClosing, @Nullable Instant withdrawn, int skaters,
		boolean cancelled) {
}
