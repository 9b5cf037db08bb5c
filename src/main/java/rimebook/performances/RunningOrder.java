package rimebook.performances;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Who comes next when the drawn order could not be kept. The order goes on behind the
 * last number that was called; teams that were passed over come after all others, and
 * those that wait by the referee's word last (common practice).
 */
public final class RunningOrder {

	private RunningOrder() {
	}

	/** The team that comes next; empty where none waits. */
	public static Optional<PerformanceView> next(List<PerformanceView> all) {
		return all.stream()
			.filter((one) -> one.status() == PerformanceStatus.WAITING)
			.min(Comparator.comparing((PerformanceView one) -> one.turn().postponed())
				.thenComparing((one) -> isPassedOver(one, all))
				.thenComparing(PerformanceView::startNumber));
	}

	/** Tell whether a team waits although a later number was called. */
	public static boolean isPassedOver(PerformanceView one, List<PerformanceView> all) {
		return one.status() == PerformanceStatus.WAITING && !one.turn().postponed() && all.stream()
			.anyMatch((other) -> other.turn().calledAt() != null && other.startNumber() > one.startNumber());
	}

}
