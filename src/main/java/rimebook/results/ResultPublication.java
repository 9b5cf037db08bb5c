package rimebook.results;

import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Carries a segment's result from its last card to official: posted with its time, signed
 * by two people, opened again only on record.
 */
@Service
public class ResultPublication {

	private final HeldResult.Source results;

	private final StandingUpdate update;

	private final SignatureChecklist checklist;

	private final Signatories signatories;

	private final Acts acts;

	ResultPublication(HeldResult.Source results, StandingUpdate update, SignatureChecklist checklist,
			Signatories signatories, Acts acts) {
		this.acts = acts;
		this.results = results;
		this.update = update;
		this.checklist = checklist;
		this.signatories = signatories;
	}

	/**
	 * Post the result of a segment: the protest clock starts.
	 * @param version the version of the segment's result the person was looking at
	 * @throws RuleViolationException {@code segment-not-complete} while teams are to
	 * skate
	 * @throws rimebook.shared.ConflictException if it is posted already
	 */
	@Transactional
	public void post(SegmentId segment, int version, Actor actor) {
		HeldResult held = this.results.of(segment, version);
		SegmentResult result = held.result();
		requireComplete(segment);
		result.post();
		this.acts.publish(line(actor, segment, "result.posted").from("running", "posted"));
		this.update.publish(held, ResultVersion.Cause.POSTED, Sentence.NONE, actor);
	}

	private void requireComplete(SegmentId segment) {
		if (!this.update.isComplete(segment)) {
			throw new RuleViolationException("segment-not-complete", Sentence.of("results.segment-not-complete"));
		}
	}

	/**
	 * Take hold of a segment's result until the transaction ends, so that nobody signs it
	 * while something is filed that would have held the signature back.
	 * @return the result as it is now; empty before the segment was opened
	 */
	@Transactional(propagation = Propagation.MANDATORY)
	public Optional<SegmentResultView> hold(SegmentId segment) {
		return this.results.ifBegun(segment).map((held) -> held.result().view());
	}

	/**
	 * Sign the result as it stands. The second of the two signatures makes it official.
	 * @param version the version of the segment's result the person was looking at
	 * @param signatory which of the two signatures
	 * @throws RuleViolationException {@code signature-held-back}, for whatever
	 * {@link SignatureChecklist} shows as missing, or {@code signature-not-seated} unless
	 * the actor has that seat in the event
	 * @throws rimebook.shared.ConflictException if it is not posted, was signed already,
	 * the same person signs twice, or it changed since it was looked at
	 */
	@Transactional
	public void sign(SegmentId segment, int version, Signatories.Signatory signatory, Actor actor) {
		HeldResult held = this.results.of(segment, version);
		SegmentResult result = held.result();
		result.requirePosted();
		this.checklist.requireMet(segment);
		result.requireUnsigned(signatory, actor);
		this.signatories.of(segment).require(signatory, actor);
		result.sign(signatory, actor, this.acts.now());
		this.acts.publish(line(actor, segment, "result.signed").from("not signed as " + signatory.code(),
				"signed as " + signatory.code()));
		if (result.isOfficial()) {
			this.update.publish(held, ResultVersion.Cause.SIGNED, Sentence.NONE, actor);
		}
	}

	/**
	 * Open an official result again, so that a correction can be made. It is posted anew
	 * by that, and again with each correction.
	 * @param reason why; it stands on the new version and on the record
	 */
	@Transactional
	public void reopen(SegmentId segment, int version, String reason, Actor actor) {
		HeldResult held = this.results.of(segment, version);
		SegmentResult result = held.result();
		String why = Required.text("reason", reason, 500);
		result.reopen();
		this.acts.publish(line(actor, segment, "result.reopened").from("official", "provisional").because(why));
		this.update.publish(held, ResultVersion.Cause.REOPENED, Sentence.said(why), actor);
	}

	private static AuditedChange line(Actor actor, SegmentId segment, String action) {
		return AuditedChange.of(actor, "result", segment, action);
	}

}
