package rimebook.stand.web;

import java.util.List;

import java.time.Instant;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.clock.PerformanceClock;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.pages.RinkClock;
import rimebook.performances.PerformanceId;
import rimebook.points.DeductionNotes;
import rimebook.points.LateDeductions;
import rimebook.points.NotedDeduction;
import rimebook.stand.DeductionRow;
import rimebook.rulings.Rulings;
import rimebook.stand.StandView;

/** Lays out what there is of the performance on the ice. */
@Component
class IceParts {

	static final String DEDUCT = "deduct";

	private final ClockNotices notices;

	private final DeductionNotes deductions;

	private final LateDeductions late;

	private final PerformanceClock clocks;

	private final RuleSets ruleSets;

	private final Rulings rulings;

	IceParts(ClockNotices notices, DeductionNotes deductions, LateDeductions late, PerformanceClock clocks,
			RuleSets ruleSets, Rulings rulings) {
		this.notices = notices;
		this.deductions = deductions;
		this.late = late;
		this.clocks = clocks;
		this.ruleSets = ruleSets;
		this.rulings = rulings;
	}

	/** The parts as they are at that moment. */
	StandParts.Ice of(StandView view, RinkClock rink, Instant now) {
		return new StandParts.Ice(clock(view, rink), SeatsPart.of(view, rink, now), ToldPart.of(view, rink),
				deductions(view, rink), DecisionPart.of(view), rulings(view));
	}

	private ClockPart clock(StandView view, RinkClock rink) {
		StandView.Now onIce = view.now();
		return (onIce == null) ? ClockPart.NONE : ClockPart.of(onIce,
				this.clocks.takenAlong(onIce.row().performance().id()), proposals(view, onIce), rink);
	}

	private List<ClockProposal> proposals(StandView view, StandView.Now onIce) {
		if (!view.event().hasTechnicalPanel()) {
			return this.notices.of(onIce);
		}
		DeductionNotes.DeductionListView list = list(onIce);
		List<NotedDeduction> noted = (list != null) ? list.deductions() : List.of();
		return new ClockDeductions(this.ruleSets.of(view.event()), noted).of(onIce.clock().findings());
	}

	private DeductionsPart deductions(StandView view, RinkClock rink) {
		StandView.Now onIce = view.now();
		if (onIce == null || !view.event().hasTechnicalPanel()) {
			return DeductionsPart.NONE;
		}
		PerformanceId performance = onIce.row().performance().id();
		return DeductionsPart.of(performance.toString(), list(onIce), this.ruleSets.of(view.event()), rink,
				this.late.ofPerformance(performance).isPresent());
	}

	private RulingsPart rulings(StandView view) {
		StandView.Now onIce = view.now();
		StandView.Row row = (onIce != null) ? onIce.row() : view.next();
		if (row == null) {
			return RulingsPart.NONE;
		}
		EntryId entry = row.performance().entry();
		SegmentId segment = view.segment().id();
		return new RulingsPart(row.team(), this.rulings.ofEntry(entry, segment), this.rulings.openOf(entry, segment));
	}

	private DeductionNotes.@Nullable DeductionListView list(StandView.Now onIce) {
		return this.deductions.ofPerformance(onIce.row().performance().id()).orElse(null);
	}

	/**
	 * What the forms beside the parts offer; one that was refused is shown as it was
	 * typed.
	 */
	void forms(StandView view, Model model) {
		if (view.event().hasTechnicalPanel()) {
			model.addAttribute("items",
					this.ruleSets.of(view.event()).deductions().stream().map(DeductionRow::choice).toList());
			model.addAttribute("noters", DeductionNotes.Noter.values());
		}
		if (!model.containsAttribute(DEDUCT)) {
			model.addAttribute(DEDUCT, DeductForm.EMPTY);
		}
	}

}
