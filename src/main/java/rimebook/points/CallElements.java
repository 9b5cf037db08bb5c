package rimebook.points;

import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;
import rimebook.tabulation.points.ElementWorth;

/**
 * The whole list of called elements in the order skated, to take the place of the list
 * before.
 *
 * @param sequence 1 for the first list of a performance, one more for each change
 */
public record CallElements(PerformanceId performance, int sequence, List<Call> calls) {

	public CallElements {
		calls = List.copyOf(calls);
	}

	/**
	 * One element.
	 *
	 * @param element its identity in the list before, {@code null} for one that is new
	 * @param base in place of the base value in the table, in hundredths; {@code null}
	 * where the table holds
	 * @param review whether the technical panel still looks at it again
	 */
	public record Call(@Nullable UUID element, String code, ElementWorth worth, @Nullable Integer base,
			boolean review) {

		/** As the full form, not under review. */
		public Call(@Nullable UUID element, String code, ElementWorth worth, @Nullable Integer base) {
			this(element, code, worth, base, false);
		}

	}

}
