package rimebook.demo;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.panels.Panels;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.rehearsal.PlacementPanel;
import rimebook.rehearsal.PointsPanel;

import static rimebook.demo.DemoCrew.REFEREE;
import static rimebook.demo.DemoCrew.SECRETARY;

/** Draws, opens and plays the segments of the invented competition. */
@Component
@Profile("demo")
class DemoSegments {

	private final StartingOrderDraw draw;

	private final SegmentRun run;

	private final Panels panels;

	private final Entries entries;

	private final PlannedElements plans;

	private final RequiredElements required;

	private final PlacementPanel placement;

	private final PointsPanel points;

	DemoSegments(StartingOrderDraw draw, SegmentRun run, Panels panels, Entries entries, PlannedElements plans,
			RequiredElements required, PlacementPanel placement, PointsPanel points) {
		this.required = required;
		this.draw = draw;
		this.run = run;
		this.panels = panels;
		this.entries = entries;
		this.plans = plans;
		this.placement = placement;
		this.points = points;
	}

	/** Draw the starting order of a segment and open it. */
	void open(SegmentView segment, DrawMethod method) {
		this.draw.draw(new StartingOrderDraw.Order(segment.id(), method, "lantern-" + segment.slug(), 4, ""), REFEREE);
		this.run.open(segment.id(), REFEREE);
	}

	/** Play a whole segment of two marks a card. */
	void play(EventView event, SegmentView segment, DrawMethod method) {
		open(segment, method);
		for (PerformanceView performance : this.run.performances(segment.id())) {
			this.run.call(performance.id(), performance.version(), REFEREE);
			this.panels.judges(event.id()).forEach((seat) -> this.placement.send(performance, seat, segment));
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), REFEREE);
		}
	}

	/** Play a segment judged by points, what is planned for the next one included. */
	void playByPoints(EventView event, SegmentView first, SegmentView free) {
		DemoPerformances files = new DemoPerformances("short");
		ask(first.id(), "I 1\nME 1\nNHE 1\nPB/B/AB 1\nTwE 1", 5);
		ask(free.id(), "GL 1\nI/CrI 1-2\nMi 0-1", 10);
		plan(event.id(), first.id(), files);
		plan(event.id(), free.id(), new DemoPerformances("free"));
		open(first, DrawMethod.WHOLE_FIELD);
		for (PerformanceView performance : this.run.performances(first.id())) {
			this.run.call(performance.id(), performance.version(), REFEREE);
			this.points.call(performance, files);
			this.points.authorise(performance);
			this.panels.judges(event.id()).forEach((seat) -> this.points.send(performance, seat, files));
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), REFEREE);
		}
	}

	/** Every team plans so, but for one that has not thought of its last element. */
	private void ask(SegmentId segment, String lines, int inAll) {
		this.required.set(
				new RequiredElements.SetRequired(segment, "", lines, inAll, inAll, this.required.of(segment).version()),
				SECRETARY);
	}

	/** Write down what every team of an event means to skate in a segment. */
	private void plan(EventId event, SegmentId segment, DemoPerformances files) {
		this.entries.ofEvent(event)
			.forEach((entry) -> this.plans.plan(new PlannedElements.PlanElements(entry.id(), segment,
					files.plan(entry.team().name()), this.plans.of(entry.id(), segment).version()), SECRETARY));
	}

}
