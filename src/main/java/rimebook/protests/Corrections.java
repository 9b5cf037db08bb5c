package rimebook.protests;

import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;
import rimebook.performances.SupposedChange;
import rimebook.placement.CardCorrection;
import rimebook.placement.CardView;
import rimebook.placement.MarkWords;
import rimebook.placement.SupposedCard;
import rimebook.points.PointsCorrection;
import rimebook.points.SheetCorrection;
import rimebook.points.SupposedLine;
import rimebook.points.SupposedPlace;
import rimebook.results.ResultEffect;
import rimebook.results.ResultPreview;
import rimebook.results.ResultPublication;
import rimebook.results.SegmentResultState;
import rimebook.results.SegmentResultView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/**
 * Corrections of closed cards and of how a team came through: one official proposes,
 * another approves with the effect on every place before their eyes. These are referee
 * and accountant. What the technical panel sent is corrected only where it was typed
 * wrongly and all of that panel agree (ISU General Regulations 2012, Rule 123 paragraph
 * 4.A.iii): they are named in the reason.
 */
@Service
public class Corrections {

	private final CorrectionRepository corrections;

	private final CardCorrection cards;

	private final PointsCorrection points;

	private final SheetCorrection sheets;

	private final StatusCorrection statuses;

	private final SegmentRun run;

	private final ResultPreview preview;

	private final ResultPublication publication;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	private final StillOpen stillOpen;

	Corrections(CorrectionRepository corrections, CardCorrection cards, PointsCorrection points, SheetCorrection sheets,
			StatusCorrection statuses, SegmentRun run, ResultPreview preview, ResultPublication publication, Ids ids,
			Clock clock, ApplicationEventPublisher events, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.corrections = corrections;
		this.cards = cards;
		this.points = points;
		this.sheets = sheets;
		this.statuses = statuses;
		this.run = run;
		this.preview = preview;
		this.publication = publication;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Propose other marks for a closed card; nothing changes yet.
	 * @throws RuleViolationException if the reason is missing, the marks are the same, or
	 * no standing can be made with them
	 * @throws ConflictException if the card is not closed, or the result is official and
	 * was not opened again
	 */
	@Transactional
	public CorrectionView propose(ProposeCorrection proposal, Actor actor) {
		String reason = Required.text("reason", proposal.reason(), 2000);
		PerformanceView performance = this.run.performance(proposal.performance());
		this.publication.hold(performance.segment()).ifPresent(Corrections::requireOpen);
		CardView card = this.cards.closedCard(proposal.performance(), proposal.seat());
		if (card.marks().equals(proposal.corrected())) {
			throw new RuleViolationException("nothing-to-correct", "first",
					"The card already holds " + MarkWords.of(card.marks()) + "; there is nothing to correct.");
		}
		this.preview.ifCorrected(performance.segment(),
				new SupposedCard(proposal.performance(), proposal.seat(), proposal.corrected()));
		Correction correction = new Correction(this.ids.next(), performance.segment(), proposal, card.marks(), reason,
				actor, this.clock.instant());
		return proposed(correction, reason, actor);
	}

	/**
	 * Propose another value for one line of a closed card in points judging; nothing
	 * changes yet.
	 * @throws RuleViolationException if the reason is missing, the value is the same or
	 * out of range, or the card has no such line
	 * @throws ConflictException as for {@link #propose}
	 */
	@Transactional
	public CorrectionView proposePoints(ProposePointsCorrection proposal, Actor actor) {
		String reason = Required.text("reason", proposal.reason(), 2000);
		PerformanceView performance = this.run.performance(proposal.performance());
		this.publication.hold(performance.segment()).ifPresent(Corrections::requireOpen);
		int old = this.points.closedValue(proposal.performance(), proposal.seat(), proposal.line());
		if (old == proposal.corrected()) {
			throw new RuleViolationException("nothing-to-correct", "value",
					"The card already holds " + proposal.line().words(old) + " there; there is nothing to correct.");
		}
		this.points.check(proposal.performance(), proposal.seat(), proposal.line(), proposal.corrected());
		Correction correction = new Correction(this.ids.next(), performance.segment(), proposal, old, reason, actor,
				this.clock.instant());
		return proposed(correction, reason, actor);
	}

	/**
	 * Propose another element or deduction for a closed performance; nothing changes yet.
	 * @throws RuleViolationException if the reason or the names of those who agree are
	 * missing, it is the same, the tables do not have it, or grades would be lacking
	 * @throws ConflictException as for {@link #propose}
	 */
	@Transactional
	public CorrectionView proposeSheet(ProposeSheetCorrection proposal, Actor actor) {
		String reason = Required.text("reason", proposal.reason(), 1500) + " Agreed by "
				+ Required.text("agreed", proposal.agreed(), 400) + ".";
		PerformanceView performance = this.run.performance(proposal.performance());
		this.publication.hold(performance.segment()).ifPresent(Corrections::requireOpen);
		String old = this.sheets.closedText(proposal.performance(), proposal.line());
		if (old.equals(proposal.corrected())) {
			throw new RuleViolationException("nothing-to-correct", "line", "There is " + proposal.line().words(old)
					+ " as " + proposal.line().words() + " already; there is nothing to correct.");
		}
		this.sheets.check(proposal.performance(), proposal.line(), proposal.corrected());
		return proposed(new Correction(this.ids.next(), performance.segment(), proposal, old, reason, actor,
				this.clock.instant()), reason, actor);
	}

	/**
	 * Propose that a team came through otherwise; nothing changes yet.
	 * @throws RuleViolationException if the reason is missing
	 * @throws ConflictException if it cannot be so, or the result is official and was not
	 * opened again
	 */
	@Transactional
	public CorrectionView proposeStatus(ProposeStatusCorrection proposal, Actor actor) {
		String reason = Required.text("reason", proposal.reason(), 500);
		PerformanceView performance = this.run.performance(proposal.performance());
		this.publication.hold(performance.segment()).ifPresent(Corrections::requireOpen);
		PerformanceStatus old = this.statuses.check(proposal.performance(), proposal.corrected());
		return proposed(new Correction(this.ids.next(), performance.segment(), proposal, old, reason, actor,
				this.clock.instant()), reason, actor);
	}

	private CorrectionView proposed(Correction correction, String reason, Actor actor) {
		this.corrections.save(correction);
		CorrectionView view = correction.view();
		String line = view.lineWords().isEmpty() ? "" : view.lineWords() + ": ";
		this.events.publishEvent(
				line(actor, view, "correction.proposed").from(line + view.oldWords(), line + view.correctedWords())
					.because(reason));
		return view;
	}

	/**
	 * Approve a correction that somebody else proposed: the card gets its new version and
	 * the standing is published anew, in one transaction.
	 * @throws ConflictException if the same person proposed it, it is decided already or
	 * the card changed in between
	 */
	@Transactional
	public void approve(CorrectionId id, int version, Actor actor) {
		holdForStatus(id);
		Correction correction = locked(id, version);
		correction.approve(actor, this.clock.instant());
		CorrectionView view = correction.view();
		correct(view, actor);
		this.events.publishEvent(line(actor, view, "correction.approved").from("proposed by " + view.proposedBy(),
				"approved by " + actor.name()));
	}

	/** How a team came through is also said of its entry, which is held first. */
	private void holdForStatus(CorrectionId id) {
		this.corrections.findPerformanceById(id.value(), Correction.STATUS)
			.map(PerformanceId::new)
			.ifPresent(this.statuses::hold);
	}

	private void correct(CorrectionView view, Actor actor) {
		StatusChange status = view.status();
		if (status != null) {
			this.statuses.correct(view.performance(), status.old(), status.corrected(), view.reason(), names(view),
					actor);
			return;
		}
		PointsChange change = view.change();
		SheetChange sheet = view.sheet();
		if (sheet != null) {
			this.sheets.correct(view.performance(), sheet.line(), sheet.old(), sheet.corrected(), twoNames(view),
					actor);
		}
		else if (change != null) {
			this.points.correct(view.performance(), seat(view), change.line(), change.old(), change.corrected(),
					twoNames(view), actor);
		}
		else {
			this.cards.correct(view.performance(), seat(view), Objects.requireNonNull(view.old()),
					Objects.requireNonNull(view.corrected()), twoNames(view), actor);
		}
	}

	/** Turn a correction down, saying why. */
	@Transactional
	public void reject(CorrectionId id, int version, String why, Actor actor) {
		Correction correction = locked(id, version);
		correction.reject(actor, Required.text("grounds", why, 2000), this.clock.instant());
		CorrectionView view = correction.view();
		this.events.publishEvent(line(actor, view, "correction.rejected")
			.from("proposed by " + view.proposedBy(), "rejected by " + actor.name())
			.because(view.decisionReason()));
	}

	/** Why a proposal cannot be approved any more; empty if it can. */
	@Transactional(readOnly = true)
	public Optional<String> refusal(CorrectionId id) {
		CorrectionView view = correction(id);
		StatusChange status = view.status();
		if (status == null) {
			return Optional.empty();
		}
		return this.statuses.refusal(view.performance(), status.old(), status.corrected());
	}

	/** Show what a correction would do to every place if it were approved now. */
	@Transactional(readOnly = true)
	public ResultEffect effect(CorrectionId id) {
		CorrectionView view = correction(id);
		StatusChange status = view.status();
		if (status != null) {
			return this.preview.ifStatus(this.run.performance(view.performance()), status.corrected());
		}
		return this.preview.ifCorrected(view.segment(), supposed(view));
	}

	private static SupposedChange supposed(CorrectionView view) {
		SheetChange sheet = view.sheet();
		if (sheet != null) {
			return new SupposedPlace(view.performance(), sheet.line(), sheet.corrected());
		}
		PointsChange change = view.change();
		return (change != null) ? new SupposedLine(view.performance(), seat(view), change.line(), change.corrected())
				: new SupposedCard(view.performance(), seat(view), Objects.requireNonNull(view.corrected()));
	}

	private static SeatId seat(CorrectionView view) {
		return Objects.requireNonNull(view.seat());
	}

	/** Return one correction. */
	@Transactional(readOnly = true)
	public CorrectionView correction(CorrectionId id) {
		return this.corrections.findById(id.value())
			.map(Correction::view)
			.orElseThrow(() -> NotFoundException.of("correction", id));
	}

	/** List the corrections of a segment, oldest first. */
	@Transactional(readOnly = true)
	public List<CorrectionView> ofSegment(SegmentId segment) {
		return this.corrections.findBySegmentOrderByProposedAt(segment.value()).stream().map(Correction::view).toList();
	}

	private Correction locked(CorrectionId id, int version) {
		Correction correction = this.corrections.findLockedById(id.value())
			.orElseThrow(() -> NotFoundException.of("correction", id));
		this.stillOpen.require(correction.view().segment());
		correction.requireVersion(version);
		return correction;
	}

	private static void requireOpen(SegmentResultView result) {
		if (result.state() == SegmentResultState.OFFICIAL) {
			throw new ConflictException("result-official",
					"This result is signed and official. The referee opens it again, with a reason, before it can change.");
		}
	}

	private static AuditedChange line(Actor actor, CorrectionView correction, String action) {
		return AuditedChange.of(actor, "correction", correction.id(), action);
	}

	/** The reason with both names, as it stands on the new version of the result. */
	private static String twoNames(CorrectionView view) {
		return view.reason() + " (" + names(view) + ")";
	}

	private static String names(CorrectionView view) {
		return "proposed by " + view.proposedBy() + ", approved by " + view.decidedBy();
	}

}
