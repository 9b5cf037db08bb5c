package rimebook.stand.web;

import java.util.ArrayList;
import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.panels.PanelView;
import rimebook.panels.Panels;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Lists everything that is needed before a segment can be opened, each with the page that
 * puts it right. What decides is {@link SegmentRun#open}; this only tells all of it at
 * once.
 */
@Component
class OpeningSteps {

	private final Competitions competitions;

	private final Panels panels;

	private final StartingOrderDraw draw;

	private final SegmentRun run;

	OpeningSteps(Competitions competitions, Panels panels, StartingOrderDraw draw, SegmentRun run) {
		this.competitions = competitions;
		this.panels = panels;
		this.draw = draw;
		this.run = run;
	}

	List<OpeningStep> of(EventView event, SegmentId segment) {
		List<OpeningStep> steps = new ArrayList<>();
		steps.add(running(this.competitions.competition(event.competition())));
		steps.add(panel(event));
		event.previousSegments(segment).forEach((earlier) -> steps.add(earlier(earlier)));
		steps.add(draw(segment));
		return List.copyOf(steps);
	}

	private OpeningStep draw(SegmentId segment) {
		String path = "/desk/draw/" + segment;
		return this.draw.late(segment)
			.map((late) -> new OpeningStep("late", false, Series.withCommas(late.teams()), path))
			.orElseGet(() -> new OpeningStep("draw", this.draw.ofSegment(segment).isPresent(), Sentence.NONE, path));
	}

	private static OpeningStep running(CompetitionView competition) {
		return new OpeningStep("competition", competition.state() == CompetitionState.RUNNING,
				competition.state().spoken(), "/desk/competitions/" + competition.id());
	}

	private OpeningStep panel(EventView event) {
		PanelView panel = this.panels.ofEvent(event.id());
		return new OpeningStep("panel", panel.isComplete(), panel.missing(), "/desk/panel/" + event.id());
	}

	private OpeningStep earlier(SegmentView earlier) {
		List<PerformanceView> all = this.run.performances(earlier.id());
		boolean done = !all.isEmpty() && all.stream().allMatch((performance) -> performance.status().isDone());
		return new OpeningStep("earlier", done, Sentence.said(earlier.name()), "/desk/stand/" + earlier.id());
	}

	/**
	 * One thing that must be true before a segment can be opened.
	 *
	 * @param key the last part of its message keys: competition, panel, draw, late,
	 * earlier
	 * @param done whether it is true
	 * @param detail what is missing in particular, may be empty
	 * @param path the page where it is put right
	 */
	record OpeningStep(String key, boolean done, Sentence detail, String path) {
	}

}
