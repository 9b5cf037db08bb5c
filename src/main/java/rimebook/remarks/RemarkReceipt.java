package rimebook.remarks;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;

/** That a seat has seen a remark: written once. */
@Entity
@Immutable
@Table(name = "remark_seen")
class RemarkReceipt extends PerformanceLine {

	@Column(name = "remark_id")
	private UUID remark;

	@Column(name = "seat_id")
	private UUID seat;

	private Instant seenAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected RemarkReceipt() {
	}

	RemarkReceipt(UUID id, Remark remark, SeatId seat, Instant now) {
		super(id, new PerformanceId(remark.performance()));
		this.remark = remark.getId();
		this.seat = seat.value();
		this.seenAt = now;
	}

	UUID remark() {
		return this.remark;
	}

	SeatId seat() {
		return new SeatId(this.seat);
	}

	RemarkReceipts.Receipt seen() {
		return new RemarkReceipts.Receipt(this.remark, this.seenAt);
	}

}
