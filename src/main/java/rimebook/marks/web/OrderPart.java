package rimebook.marks.web;

import java.util.List;

import rimebook.marks.StandView;

/** The running order as a strip. */
record OrderPart(List<OrderRow> rows, int done) implements LivePart {

	static OrderPart of(StandView stand) {
		List<OrderRow> rows = stand.order().stream().map((row) -> OrderRow.of(row, stand)).toList();
		return new OrderPart(rows, (int) rows.stream().filter((row) -> row.status().isDone()).count());
	}

}
