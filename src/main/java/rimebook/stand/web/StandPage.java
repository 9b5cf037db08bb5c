package rimebook.stand.web;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.pages.RinkClock;
import rimebook.paper.PaperKeying;
import rimebook.performances.PerformanceId;
import rimebook.performances.StandingAfterCards;
import rimebook.remarks.Remarks;
import rimebook.rulings.Rulings;
import rimebook.shared.NotFoundException;
import rimebook.stand.Stand;
import rimebook.stand.StandView;

/**
 * Lays the referee's stand out: for the first look, after a refusal, and part by part.
 */
@Component
class StandPage {

	static final String REMARK = "remark";

	static final String END = "end";

	private final Stand stand;

	private final Competitions competitions;

	private final OpeningSteps steps;

	private final PaperKeying keying;

	private final IceParts ice;

	private final StandForms panelForms;

	private final SkatingAgain skatingAgain;

	private final Rulings rulings;

	private final StandingAfterCards standings;

	private final Clock clock;

	StandPage(Stand stand, Competitions competitions, OpeningSteps steps, PaperKeying keying, IceParts ice,
			StandForms panelForms, SkatingAgain skatingAgain, Rulings rulings, StandingAfterCards standings,
			Clock clock) {
		this.stand = stand;
		this.competitions = competitions;
		this.steps = steps;
		this.keying = keying;
		this.ice = ice;
		this.panelForms = panelForms;
		this.skatingAgain = skatingAgain;
		this.rulings = rulings;
		this.standings = standings;
		this.clock = clock;
	}

	/**
	 * Show the whole page. A form that is in the model already is shown as it was typed.
	 * @param about whose end is asked for; {@code null} for the one on the ice or next
	 */
	String show(SegmentId segment, @Nullable PerformanceId about, Model model) {
		StandView view = this.stand.ofSegment(segment);
		CompetitionView competition = this.competitions.competition(view.event().competition());
		model.addAttribute("stand", view);
		model.addAttribute("competition", competition);
		model.addAttribute("segment", segment);
		model.addAttribute("path", "/desk/stand/" + segment);
		parts(view, competition).into(model);
		model.addAttribute("serverNow", now());
		if (view.open()) {
			forms(view, new RinkClock(competition.zone()), about, model);
			this.panelForms.into(view, model);
			this.skatingAgain.into(view, model);
		}
		else {
			model.addAttribute("steps", this.steps.of(view.event(), segment));
		}
		return "stand/stand";
	}

	StandParts parts(SegmentId segment) {
		StandView view = this.stand.ofSegment(segment);
		return parts(view, this.competitions.competition(view.event().competition()));
	}

	/** The moment that running times are counted to. */
	Instant now() {
		return this.clock.instant();
	}

	private StandParts parts(StandView view, CompetitionView competition) {
		RinkClock rink = new RinkClock(competition.zone());
		return new StandParts(
				new StandParts.Course(OrderPart.of(view), ReopenedPart.of(view, rink, this.clock.instant()),
						this.skatingAgain.part(view, rink), new PaperPart(this.keying.unsettled(view.segment().id())),
						this.standings.newest(view.segment().id()).map(StandingPart::of).orElse(StandingPart.NONE)),
				new StandParts.Ice(this.ice.clock(view, rink), SeatsPart.of(view, rink, this.clock.instant()),
						ToldPart.of(view, rink), this.ice.deductions(view, rink), DecisionPart.of(view), rulings(view)),
				new StandParts.People(this.panelForms.part(view, rink), this.panelForms.guesses(view, rink),
						this.panelForms.bound(view)));
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

	private void forms(StandView view, RinkClock rink, @Nullable PerformanceId about, Model model) {
		StandView.Now onIce = view.now();
		StandView.Row toEnd = toEnd(view, about);
		model.addAttribute("since", (onIce != null) ? rink.time(onIce.row().performance().turn().calledAt()) : "");
		model.addAttribute("toEnd", toEnd);
		model.addAttribute("endOpen", about != null);
		model.addAttribute("ways", (toEnd != null) ? EndForm.ways(toEnd.performance().status()) : List.of());
		model.addAttribute("kinds", Remarks.RemarkKind.values());
		model.addAttribute("quickRemarks", QuickRemark.common());
		model.addAttribute("pricedRemarks", QuickRemark.priced(view.event(), view.segment()));
		this.ice.forms(view, model);
		if (!model.containsAttribute(REMARK)) {
			model.addAttribute(REMARK,
					RemarkForm.about((onIce != null) ? onIce.row().performance().id().toString() : ""));
		}
		if (!model.containsAttribute(END)) {
			model.addAttribute(END, EndForm.about(toEnd));
		}
	}

	private static StandView.@Nullable Row toEnd(StandView view, @Nullable PerformanceId about) {
		if (about != null) {
			return view.order()
				.stream()
				.filter((row) -> row.performance().id().equals(about))
				.findFirst()
				.orElseThrow(() -> NotFoundException.of("performance", about));
		}
		StandView.Now onIce = view.now();
		return (onIce != null) ? onIce.row() : view.next();
	}

	/** The identity of the performance on the ice, empty between two. */
	static String onIce(DecisionPart decision) {
		return (decision.now() != null) ? Objects.toString(decision.now().performance().id()) : "";
	}

}
