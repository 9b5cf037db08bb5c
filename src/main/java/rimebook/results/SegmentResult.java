package rimebook.results;

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
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** The road of one segment's result from its first card to two signatures. */
@Entity
class SegmentResult {

	@Id
	@Column(name = "segment_id")
	private UUID segment;

	@Version
	private @Nullable Integer version;

	@Enumerated(EnumType.STRING)
	private SegmentResultView.SegmentResultState state = SegmentResultView.SegmentResultState.RUNNING;

	private int standingNumber;

	@Column(name = "on_ice_entry_id")
	private @Nullable UUID onIce;

	private boolean interrupted;

	private @Nullable Instant postedAt;

	private String postedBy = "";

	private String refereeSignature = "";

	private String refereeSignatureId = "";

	private @Nullable Instant refereeSignedAt;

	private String accountantSignature = "";

	private String accountantSignatureId = "";

	private @Nullable Instant accountantSignedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected SegmentResult() {
	}

	SegmentResult(SegmentId segment) {
		this.segment = segment.value();
	}

	void takesTheIce(EntryId entry) {
		this.onIce = entry.value();
		this.interrupted = false;
	}

	/** Note that the team on the ice was broken off, or is no longer. */
	void interrupted(boolean now) {
		this.interrupted = now;
	}

	/** Note that a team is done; another one that is on the ice meanwhile stays there. */
	void leavesTheIce(EntryId entry) {
		if (entry.value().equals(this.onIce)) {
			this.onIce = null;
			this.interrupted = false;
		}
	}

	/** Count a new standing; what was signed before does not cover it. */
	int nextStanding() {
		this.standingNumber++;
		return this.standingNumber;
	}

	void post() {
		require(SegmentResultView.SegmentResultState.RUNNING, Sentence.of("results.act.posted"));
		this.state = SegmentResultView.SegmentResultState.POSTED;
	}

	/** Note when it was posted last, by whose act. */
	void postedAt(Instant now, String name) {
		this.postedAt = now;
		this.postedBy = name;
	}

	boolean isPosted() {
		return this.state == SegmentResultView.SegmentResultState.POSTED;
	}

	/** Refuse to sign what is not posted, or official already. */
	void requirePosted() {
		require(SegmentResultView.SegmentResultState.POSTED, Sentence.of("results.act.signed"));
	}

	void sign(Signatories.Signatory signatory, Actor actor, Instant now) {
		requirePosted();
		requireUnsigned(signatory, actor);
		if (signatory == Signatories.Signatory.REFEREE) {
			this.refereeSignature = actor.name();
			this.refereeSignatureId = actor.id();
			this.refereeSignedAt = now;
		}
		else {
			this.accountantSignature = actor.name();
			this.accountantSignatureId = actor.id();
			this.accountantSignedAt = now;
		}
		if (!this.refereeSignature.isEmpty() && !this.accountantSignature.isEmpty()) {
			this.state = SegmentResultView.SegmentResultState.OFFICIAL;
		}
	}

	/** Refuse a second signature in one place, or of one person. */
	void requireUnsigned(Signatories.Signatory signatory, Actor actor) {
		String own = (signatory == Signatories.Signatory.REFEREE) ? this.refereeSignature : this.accountantSignature;
		String other = (signatory == Signatories.Signatory.REFEREE) ? this.accountantSignatureId
				: this.refereeSignatureId;
		String otherName = (signatory == Signatories.Signatory.REFEREE) ? this.accountantSignature
				: this.refereeSignature;
		if (!own.isEmpty()) {
			throw new ConflictException("already-signed",
					Sentence.of("results.already-signed", own, signatory.spoken()));
		}
		if (actor.isNotedAs(other, otherName)) {
			throw new ConflictException("two-names-needed", Sentence.of("results.two-names-needed", actor.name()));
		}
	}

	void reopen() {
		require(SegmentResultView.SegmentResultState.OFFICIAL, Sentence.of("results.act.opened-again"));
		this.state = SegmentResultView.SegmentResultState.POSTED;
		forgetSignatures();
	}

	/** A fact changed: nothing that was signed covers it any more. */
	void change() {
		if (this.state == SegmentResultView.SegmentResultState.OFFICIAL) {
			throw new ConflictException("result-official", Sentence.of("results.result-official"));
		}
		forgetSignatures();
	}

	private void forgetSignatures() {
		this.refereeSignature = "";
		this.refereeSignatureId = "";
		this.refereeSignedAt = null;
		this.accountantSignature = "";
		this.accountantSignatureId = "";
		this.accountantSignedAt = null;
	}

	private void require(SegmentResultView.SegmentResultState expected, Sentence act) {
		if (this.state != expected) {
			throw new ConflictException("result-state", Sentence.of("results.cannot-be", this.state.spoken(), act));
		}
	}

	/** Refuse an act that was decided on an older look at this result. */
	void requireVersion(int seen) {
		ConflictException.requireSeen("result", seen, this.version);
	}

	boolean isOfficial() {
		return this.state == SegmentResultView.SegmentResultState.OFFICIAL;
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	SegmentResultView view() {
		return new SegmentResultView(segment(), this.state,
				new SegmentResultView.Ice((this.onIce != null) ? new EntryId(this.onIce) : null, this.interrupted),
				(this.postedAt != null) ? new SegmentResultView.Posted(this.postedAt, this.postedBy) : null,
				new SegmentResultView.Signatures(
						new SegmentResultView.Signature(this.refereeSignature, this.refereeSignedAt),
						new SegmentResultView.Signature(this.accountantSignature, this.accountantSignedAt)),
				this.standingNumber, (this.version != null) ? this.version : 0);
	}

}
