package rimebook.draw;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import org.hibernate.annotations.Immutable;

import rimebook.competition.SegmentId;

/** A drawn order; written once and never changed. */
@Entity
@Immutable
class StartingOrder {

	@Id
	private UUID id;

	private UUID segmentId;

	private int number;

	@Enumerated(EnumType.STRING)
	private DrawMethod method;

	private String seed;

	private int groupMaximum;

	private Instant drawnAt;

	private String drawnBy;

	private String reason;

	/** How many at the end came after the draw. */
	private int added;

	@ElementCollection
	@CollectionTable(name = "start_position", joinColumns = @JoinColumn(name = "order_id"))
	@OrderBy("number")
	private List<StartPosition> starts = new ArrayList<>();

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected StartingOrder() {
	}

	StartingOrder(UUID id, int number, StartingOrderDraw.Order order, String seed, Instant drawnAt, String drawnBy) {
		this.id = id;
		this.segmentId = order.segment().value();
		this.number = number;
		this.method = order.method();
		this.seed = seed;
		this.groupMaximum = order.groupMaximum();
		this.drawnAt = drawnAt;
		this.drawnBy = drawnBy;
		this.reason = (number > 1) ? order.reason() : "";
	}

	/**
	 * The order that goes on from another one: everybody keeps number and group, and
	 * those who came after the draw follow in the last group.
	 */
	StartingOrder(UUID id, StartingOrder before, List<Lot> late, String reason, Instant at, String by) {
		this.id = id;
		this.segmentId = before.segmentId;
		this.number = before.number + 1;
		this.method = before.method;
		this.seed = before.seed;
		this.groupMaximum = before.groupMaximum;
		this.drawnAt = at;
		this.drawnBy = by;
		this.reason = reason;
		this.added = before.added + late.size();
		this.starts.addAll(before.starts);
		int group = before.starts.get(before.starts.size() - 1).group();
		for (Lot lot : late) {
			this.starts.add(new StartPosition(this.starts.size() + 1, group, lot.entry().value(), lot.ticket(),
					lot.digested()));
		}
	}

	/** Give out the starting numbers, group by group. */
	StartingOrder with(List<List<Lot>> groups) {
		for (int group = 0; group < groups.size(); group++) {
			for (Lot lot : groups.get(group)) {
				this.starts.add(new StartPosition(this.starts.size() + 1, group + 1, lot.entry().value(), lot.ticket(),
						lot.digested()));
			}
		}
		return this;
	}

	int number() {
		return this.number;
	}

	String seed() {
		return this.seed;
	}

	StartingOrderView view() {
		return new StartingOrderView(new SegmentId(this.segmentId), this.number,
				new StartingOrderView.Procedure(this.method, this.seed, this.groupMaximum, this.added),
				new StartingOrderView.Act(this.drawnAt, this.drawnBy, this.reason),
				this.starts.stream().map(StartPosition::view).toList());
	}

}
