package rimebook.protests;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.performances.Amending;
import rimebook.performances.Amendment;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;
import rimebook.results.ResultPreview;
import rimebook.results.ResultPublication;
import rimebook.results.SegmentResultView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Corrections of closed cards and of how a team came through: one official proposes,
 * another approves with the effect on every place before their eyes. These are referee
 * and accountant. What the technical panel sent is corrected only where it was typed
 * wrongly and all of that panel agree (ISU General Regulations 2012, Rule 123 paragraph
 * 4.A.iii): they are named in the reason.
 */
@Service
public class Corrections {

	private final CorrectionBook corrections;

	private final Amendments amendments;

	private final SegmentRun run;

	private final ResultPreview preview;

	private final ResultPublication publication;

	private final Acts acts;

	Corrections(CorrectionBook corrections, Amendments amendments, SegmentRun run, ResultPreview preview,
			ResultPublication publication, Acts acts) {
		this.acts = acts;
		this.corrections = corrections;
		this.amendments = amendments;
		this.run = run;
		this.preview = preview;
		this.publication = publication;
	}

	/**
	 * Propose that something else shall stand in one place; nothing changes yet.
	 * @throws RuleViolationException if the reason is missing, or the names of those who
	 * agree where it is the technical panel's; if it stands there already, cannot stand
	 * there, or no standing can be made with it
	 * @throws ConflictException if the cards are not closed, a team cannot have come
	 * through so, or the result is official and was not opened again
	 */
	@Transactional
	public CorrectionView propose(ProposeCorrection proposal, Actor actor) {
		Amendment.SupposedChange<?> change = proposal.change();
		String reason = reason(proposal, change.amendment());
		PerformanceView performance = this.run.performance(change.performance());
		this.publication.hold(performance.segment()).ifPresent(Corrections::requireOpen);
		Amendment old = this.amendments.check(change);
		// What stands against a status is shown beside it, since it may go away.
		if (!(change.amendment() instanceof StatusCorrection.StatusAmendment)) {
			this.preview.of(change);
		}
		String kept = this.amendments.write(new Amendments.Pair(old, change.amendment()));
		return proposed(new Correction(this.acts.nextId(), performance, proposal,
				new Correction.Proposed(kept, reason, actor, this.acts.now())), actor);
	}

	private static String reason(ProposeCorrection proposal, Amendment amendment) {
		return amendment.isOfTechnicalPanel()
				? Required.text("reason", proposal.reason(), 1500) + " Agreed by "
						+ Required.text("agreed", proposal.agreed(), 400) + "."
				: Required.text("reason", proposal.reason(), amendment.longestReason());
	}

	private CorrectionView proposed(Correction correction, Actor actor) {
		CorrectionView view = this.corrections.add(correction);
		Amendment corrected = view.change().amendment();
		String place = corrected.place().isEmpty() ? "" : corrected.place() + ": ";
		this.acts.publish(line(actor, view, "correction.proposed")
			.from(place + view.amended().old().words(), place + corrected.words())
			.because(view.proposal().reason()));
		return view;
	}

	/**
	 * Approve a correction that somebody else proposed: the card gets its new version and
	 * the standing is published anew, in one transaction.
	 * @throws ConflictException if the same person proposed it, it is decided already or
	 * the card changed in between
	 */
	@Transactional
	public void approve(CorrectionView.CorrectionId id, int version, Actor actor) {
		this.corrections.holdBefore(id);
		Correction correction = this.corrections.hold(id, version);
		correction.approve(actor, this.acts.now());
		CorrectionView view = this.corrections.view(correction);
		this.amendments.apply(view.change(), view.amended().old(),
				new Amending.Approval(view.proposal().reason(), names(view), actor));
		this.acts.publish(line(actor, view, "correction.approved").from("proposed by " + view.proposal().by(),
				"approved by " + actor.name()));
	}

	/** Turn a correction down, saying why. */
	@Transactional
	public void reject(CorrectionView.CorrectionId id, int version, String why, Actor actor) {
		Correction correction = this.corrections.hold(id, version);
		correction.reject(actor, Required.text("grounds", why, 2000), this.acts.now());
		CorrectionView view = this.corrections.view(correction);
		this.acts.publish(line(actor, view, "correction.rejected")
			.from("proposed by " + view.proposal().by(), "rejected by " + actor.name())
			.because(view.decision().reason()));
	}

	/** Why a proposal cannot be approved any more; empty if it can. */
	@Transactional(readOnly = true)
	public Optional<Sentence> refusal(CorrectionView.CorrectionId id) {
		CorrectionView view = correction(id);
		return this.amendments.refusal(view.change(), view.amended().old());
	}

	/** Show what a correction would do to every place if it were approved now. */
	@Transactional(readOnly = true)
	public ResultPreview.ResultEffect effect(CorrectionView.CorrectionId id) {
		return this.preview.of(correction(id).change());
	}

	/** Return one correction. */
	@Transactional(readOnly = true)
	public CorrectionView correction(CorrectionView.CorrectionId id) {
		return this.corrections.find(id);
	}

	/** List the corrections of a segment, oldest first. */
	@Transactional(readOnly = true)
	public List<CorrectionView> ofSegment(SegmentId segment) {
		return this.corrections.ofSegment(segment);
	}

	private static void requireOpen(SegmentResultView result) {
		if (result.state() == SegmentResultView.SegmentResultState.OFFICIAL) {
			throw new ConflictException("result-official", Sentence.of("protests.result-official"));
		}
	}

	private static AuditedChange line(Actor actor, CorrectionView correction, String action) {
		return AuditedChange.of(actor, "correction", correction.id(), action);
	}

	private static Sentence names(CorrectionView view) {
		return Sentence.of("note.by-two", view.proposal().by(), view.decision().by());
	}

	/**
	 * What one official asks another to approve.
	 *
	 * @param change what shall stand where, as the official meant it who mistyped it
	 * @param reason what went wrong, and who says so
	 * @param agreed the officials of the technical panel who agree, by name; empty for
	 * what is not theirs
	 * @param protest the protest that led to it, {@code null} for none
	 */
	public record ProposeCorrection(Amendment.SupposedChange<?> change, String reason, String agreed,
			ProtestView.@Nullable ProtestId protest) {

		/** Without the technical panel, and without a protest. */
		public ProposeCorrection(Amendment.SupposedChange<?> change, String reason) {
			this(change, reason, "", null);
		}

	}

}
