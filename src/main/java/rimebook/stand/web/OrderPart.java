package rimebook.stand.web;

import java.util.List;

import rimebook.performances.PerformanceStatus;
import rimebook.stand.StandView;

/**
 * The running order as a strip.
 *
 * @param done how many of those that did not withdraw are done
 * @param of how many did not withdraw
 */
record OrderPart(List<OrderRow> rows, int done, int of) implements LivePart {

	static OrderPart of(StandView stand) {
		List<OrderRow> rows = stand.order().stream().map((row) -> OrderRow.of(row, stand)).toList();
		List<PerformanceStatus> started = rows.stream()
			.map(OrderRow::status)
			.filter((status) -> status != PerformanceStatus.WITHDRAWN)
			.toList();
		return new OrderPart(rows, (int) started.stream().filter(PerformanceStatus::isDone).count(), started.size());
	}

}
