package rimebook.performances;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** One change of a segment's panel: written once, never changed. */
@Entity
@Immutable
class PanelChange extends AppendedRow {

	@Column(name = "segment_id")
	private UUID segment;

	private int sequence;

	@Enumerated(EnumType.STRING)
	private Kind kind;

	@Column(name = "seat_id")
	private UUID seat;

	@Column(name = "substitute_id")
	private @Nullable UUID substitute;

	@Column(name = "performance_id")
	private @Nullable UUID performance;

	private String rule = "";

	private String reason;

	private String madeBy;

	private Instant madeAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PanelChange() {
	}

	PanelChange(UUID id, SegmentId segment, int sequence, Decided decided, Actor actor, Instant now) {
		super(id);
		this.segment = segment.value();
		this.sequence = sequence;
		this.kind = decided.kind();
		this.seat = decided.seat().value();
		this.reason = decided.reason();
		this.madeBy = actor.name();
		this.madeAt = now;
	}

	/** Say whose cards count instead. */
	PanelChange by(SeatId substitute) {
		this.substitute = substitute.value();
		return this;
	}

	/** Say which card it is about, and by which rule. */
	PanelChange about(PerformanceId performance, String rule) {
		this.performance = performance.value();
		this.rule = rule;
		return this;
	}

	/** Say by which rule; empty where none was needed. */
	PanelChange byRule(String rule) {
		this.rule = rule;
		return this;
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	int sequence() {
		return this.sequence;
	}

	Kind kind() {
		return this.kind;
	}

	boolean isOf(SeatId seat) {
		return this.seat.equals(seat.value());
	}

	boolean isOf(PerformanceId performance) {
		return performance.value().equals(this.performance);
	}

	SeatId seat() {
		return new SeatId(this.seat);
	}

	@Nullable SeatId substitute() {
		return (this.substitute != null) ? new SeatId(this.substitute) : null;
	}

	@Nullable PerformanceId performance() {
		return (this.performance != null) ? new PerformanceId(this.performance) : null;
	}

	String rule() {
		return this.rule;
	}

	String reason() {
		return this.reason;
	}

	String madeBy() {
		return this.madeBy;
	}

	Instant madeAt() {
		return this.madeAt;
	}

	/** How the panel of a segment was changed while it was under way. */
	enum Kind {

		/** All cards of the substitute count in place of that judge's. */
		SUBSTITUTED,

		/** All cards of that judge are left out of the segment. */
		LEFT_OUT,

		/** What was said about that seat is taken back: its own cards count. */
		SEAT_BACK,

		/** One card of that seat never came: its marks of that performance are absent. */
		EXCUSED,

		/** The performance was opened again: the card is expected once more. */
		EXCUSE_OVER;

		boolean isAboutWholeSegment() {
			return this == SUBSTITUTED || this == LEFT_OUT || this == SEAT_BACK;
		}

	}

	/** What is decided about which seat, and why. */
	record Decided(Kind kind, SeatId seat, String reason) {
	}

}
