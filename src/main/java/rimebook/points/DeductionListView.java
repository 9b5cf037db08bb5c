package rimebook.points;

import java.time.Instant;
import java.util.List;

/**
 * The deductions that count now.
 *
 * @param sequence the version of the list, from 1
 * @param receivedAt when it was received, UTC
 */
public record DeductionListView(int sequence, List<NotedDeduction> deductions, Instant receivedAt) {

	public DeductionListView {
		deductions = List.copyOf(deductions);
	}

}
