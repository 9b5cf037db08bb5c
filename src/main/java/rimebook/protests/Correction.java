package rimebook.protests;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.points.PointsLine;
import rimebook.points.SheetLine;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.tabulation.CardMarks;

/** A correction from its proposal to the other official's decision. */
@Entity
class Correction {

	/** The line of a correction that is about no line of a card. */
	static final String STATUS = "status";

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "segment_id")
	private UUID segment;

	@Column(name = "performance_id")
	private UUID performance;

	@Column(name = "seat_id")
	private @Nullable UUID seat;

	@Column(name = "protest_id")
	private @Nullable UUID protest;

	private int oldFirst;

	private int oldSecond;

	private int newFirst;

	private int newSecond;

	private String line = "";

	private int oldValue;

	private int newValue;

	private String oldText = "";

	private String newText = "";

	private String reason;

	@Enumerated(EnumType.STRING)
	private CorrectionState state = CorrectionState.PROPOSED;

	private String proposedBy;

	private String proposedById;

	private Instant proposedAt;

	private String decidedBy = "";

	private @Nullable Instant decidedAt;

	private String decisionReason = "";

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Correction() {
	}

	Correction(UUID id, SegmentId segment, ProposeCorrection proposal, CardMarks old, String reason, Actor by,
			Instant now) {
		this(id, segment, proposal.performance(), proposal.seat(), proposal.protest(), reason, by, now);
		this.oldFirst = old.first();
		this.oldSecond = old.second();
		this.newFirst = proposal.corrected().first();
		this.newSecond = proposal.corrected().second();
	}

	Correction(UUID id, SegmentId segment, ProposePointsCorrection proposal, int old, String reason, Actor by,
			Instant now) {
		this(id, segment, proposal.performance(), proposal.seat(), proposal.protest(), reason, by, now);
		this.line = proposal.line().toString();
		this.oldValue = old;
		this.newValue = proposal.corrected();
	}

	Correction(UUID id, SegmentId segment, ProposeSheetCorrection proposal, String old, String reason, Actor by,
			Instant now) {
		this(id, segment, proposal.performance(), null, proposal.protest(), reason, by, now);
		this.line = proposal.line().toString();
		this.oldText = old;
		this.newText = proposal.corrected();
	}

	Correction(UUID id, SegmentId segment, ProposeStatusCorrection proposal, PerformanceStatus old, String reason,
			Actor by, Instant now) {
		this(id, segment, proposal.performance(), null, proposal.protest(), reason, by, now);
		this.line = STATUS;
		this.oldText = old.name();
		this.newText = proposal.corrected().name();
	}

	private Correction(UUID id, SegmentId segment, PerformanceId performance, @Nullable SeatId seat,
			@Nullable ProtestId protest, String reason, Actor by, Instant now) {
		this.id = id;
		this.segment = segment.value();
		this.performance = performance.value();
		this.seat = (seat != null) ? seat.value() : null;
		this.protest = (protest != null) ? protest.value() : null;
		this.reason = reason;
		this.proposedBy = by.name();
		this.proposedById = by.id();
		this.proposedAt = now;
	}

	void approve(Actor by, Instant now) {
		decide(CorrectionState.APPROVED, by, "", now);
	}

	void reject(Actor by, String why, Instant now) {
		decide(CorrectionState.REJECTED, by, why, now);
	}

	private void decide(CorrectionState next, Actor by, String why, Instant now) {
		if (this.state != CorrectionState.PROPOSED) {
			throw new ConflictException("correction-decided",
					"This correction was " + this.state.name().toLowerCase() + " already by " + this.decidedBy + ".");
		}
		if (isProposedBy(by)) {
			throw new ConflictException("two-names-needed",
					"A correction is decided by somebody other than " + this.proposedBy + ", who proposed it.");
		}
		this.state = next;
		this.decidedBy = by.name();
		this.decisionReason = why;
		this.decidedAt = now;
	}

	/** Refuse an act that was decided on an older look at this correction. */
	void requireVersion(int seen) {
		if (this.version != null && this.version != seen) {
			throw ConflictException.stale("correction");
		}
	}

	private boolean changesPoints() {
		return !changesMarks() && !changesSheet() && !changesStatus();
	}

	private boolean changesSheet() {
		return SheetLine.isOne(this.line);
	}

	private boolean changesStatus() {
		return this.line.equals(STATUS);
	}

	private boolean changesMarks() {
		return this.line.isEmpty();
	}

	boolean isProposedBy(Actor person) {
		return person.isNotedAs(this.proposedById, this.proposedBy);
	}

	CorrectionView view() {
		return new CorrectionView(new CorrectionId(this.id), new SegmentId(this.segment),
				new PerformanceId(this.performance), (this.seat != null) ? new SeatId(this.seat) : null,
				(this.protest != null) ? new ProtestId(this.protest) : null,
				changesMarks() ? new CardMarks(this.oldFirst, this.oldSecond) : null,
				changesMarks() ? new CardMarks(this.newFirst, this.newSecond) : null,
				changesPoints() ? new PointsChange(PointsLine.parse(this.line), this.oldValue, this.newValue) : null,
				changesSheet() ? new SheetChange(SheetLine.parse(this.line), this.oldText, this.newText) : null,
				changesStatus() ? new StatusChange(PerformanceStatus.valueOf(this.oldText),
						PerformanceStatus.valueOf(this.newText)) : null,
				this.reason, this.state, this.proposedBy, this.proposedAt, this.decidedBy, this.decidedAt,
				this.decisionReason, (this.version != null) ? this.version : 0);
	}

}
