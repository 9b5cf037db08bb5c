package rimebook.stand.web;

import java.time.Clock;
import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.CompetitionView;
import rimebook.competition.SegmentId;
import rimebook.pages.Alarm;
import rimebook.pages.RinkClock;
import rimebook.performances.PerformanceId;
import rimebook.remarks.Remarks;
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

	private final OpeningSteps steps;

	private final IceParts ice;

	private final CourseParts course;

	private final StandForms panelForms;

	private final ObjectProvider<Alarm.Source> alarms;

	private final Clock clock;

	StandPage(Stand stand, OpeningSteps steps, IceParts ice, CourseParts course, StandForms panelForms,
			ObjectProvider<Alarm.Source> alarms, Clock clock) {
		this.stand = stand;
		this.steps = steps;
		this.ice = ice;
		this.course = course;
		this.panelForms = panelForms;
		this.alarms = alarms;
		this.clock = clock;
	}

	/**
	 * Show the whole page. A form that is in the model already is shown as it was typed.
	 * @param about whose end is asked for; {@code null} for the one on the ice or next
	 */
	String show(SegmentId segment, @Nullable PerformanceId about, Model model) {
		StandView view = this.stand.ofSegment(segment);
		CompetitionView competition = view.at().competition();
		model.addAttribute("stand", view);
		model.addAttribute("competition", competition);
		model.addAttribute("segment", segment);
		model.addAttribute("path", "/desk/stand/" + segment);
		parts(view).into(model);
		model.addAttribute("serverNow", now());
		if (view.open()) {
			forms(view, new RinkClock(competition.zone()), about, model);
			this.panelForms.into(view, model);
			this.course.forms(view, model);
		}
		else {
			model.addAttribute("steps", this.steps.of(view.event(), segment));
		}
		return "stand/stand";
	}

	StandParts parts(SegmentId segment) {
		return parts(this.stand.ofSegment(segment));
	}

	/** The moment that running times are counted to. */
	Instant now() {
		return this.clock.instant();
	}

	private StandParts parts(StandView view) {
		RinkClock rink = new RinkClock(view.at().competition().zone());
		Instant now = now();
		return new StandParts(this.course.of(view, rink, now), this.ice.of(view, rink, now),
				new StandParts.People(this.panelForms.part(view, rink), this.panelForms.guesses(view, rink),
						this.panelForms.bound(view),
						new AlarmsPart(this.alarms.stream().flatMap(Alarm.Source::alarms).toList())));
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

	/**
	 * Whose forms the page has: those of the performance on the ice and, between two, of
	 * the one that comes next, as it is now. Another one may come next after a withdrawal
	 * or a new draw.
	 */
	static String onIce(DecisionPart decision) {
		if (decision.now() != null) {
			return decision.now().performance().id().toString();
		}
		return (decision.next() != null)
				? "next-" + decision.next().performance().id() + "-" + decision.next().performance().version() : "";
	}

}
