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
import rimebook.performances.Amendment;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** A correction from its proposal to the other official's decision. */
@Entity
class Correction {

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

	/** What it was proposed on and what shall be, as {@code Amendments} keeps it. */
	private String amendment;

	private String reason;

	@Enumerated(EnumType.STRING)
	private CorrectionView.State state = CorrectionView.State.PROPOSED;

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

	Correction(UUID id, PerformanceView performance, Corrections.ProposeCorrection proposal, Proposed proposed) {
		SeatId seat = proposal.change().seat();
		this.id = id;
		this.segment = performance.segment().value();
		this.performance = performance.id().value();
		this.seat = (seat != null) ? seat.value() : null;
		this.protest = (proposal.protest() != null) ? proposal.protest().value() : null;
		this.amendment = proposed.amendment();
		this.reason = proposed.reason();
		this.proposedBy = proposed.by().name();
		this.proposedById = proposed.by().id();
		this.proposedAt = proposed.at();
	}

	void approve(Actor by, Instant now) {
		decide(CorrectionView.State.APPROVED, by, "", now);
	}

	void reject(Actor by, String why, Instant now) {
		decide(CorrectionView.State.REJECTED, by, why, now);
	}

	private void decide(CorrectionView.State next, Actor by, String why, Instant now) {
		if (!isProposed()) {
			throw new ConflictException("correction-decided",
					Sentence.of("protests.correction-decided", this.state.spoken(), this.decidedBy));
		}
		if (isProposedBy(by)) {
			throw new ConflictException("two-names-needed",
					Sentence.of("protests.correction.two-names-needed", this.proposedBy));
		}
		this.state = next;
		this.decidedBy = by.name();
		this.decisionReason = why;
		this.decidedAt = now;
	}

	/** Refuse an act that was decided on an older look at this correction. */
	void requireVersion(int seen) {
		ConflictException.requireSeen("correction", seen, this.version);
	}

	boolean isProposedBy(Actor person) {
		return person.isNotedAs(this.proposedById, this.proposedBy);
	}

	boolean isProposed() {
		return this.state == CorrectionView.State.PROPOSED;
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	CorrectionView view(Amendments amendments) {
		Amendments.Pair pair = amendments.read(this.amendment);
		return new CorrectionView(new CorrectionView.CorrectionId(this.id), segment(),
				new CorrectionView.Amended(new Amendment.SupposedChange<>(new PerformanceId(this.performance),
						(this.seat != null) ? new SeatId(this.seat) : null, pair.after()), pair.before()),
				new CorrectionView.Proposal(this.proposedBy, this.proposedAt, this.reason,
						(this.protest != null) ? new ProtestView.ProtestId(this.protest) : null),
				new CorrectionView.Decision(this.state, this.decidedBy, this.decidedAt, this.decisionReason),
				(this.version != null) ? this.version : 0);
	}

	/**
	 * Who proposes what.
	 *
	 * @param amendment as {@link Amendments#write} writes it
	 */
	record Proposed(String amendment, String reason, Actor by, Instant at) {
	}

}
