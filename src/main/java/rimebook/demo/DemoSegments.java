package rimebook.demo;

import java.util.UUID;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkSubmission;
import rimebook.shared.Actor;
import rimebook.tabulation.CardMarks;

import static rimebook.demo.DemoCrew.REFEREE;

/** Draws, opens and plays the segments of the invented competition. */
@Component
@Profile("demo")
class DemoSegments {

	private final StartingOrderDraw draw;

	private final SegmentRun run;

	private final Panels panels;

	private final Entries entries;

	private final MarkSubmission submission;

	private final PointsRehearsal points;

	DemoSegments(StartingOrderDraw draw, SegmentRun run, Panels panels, Entries entries, MarkSubmission submission,
			PointsRehearsal points) {
		this.draw = draw;
		this.run = run;
		this.panels = panels;
		this.entries = entries;
		this.submission = submission;
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
			this.panels.judges(event.id()).forEach((seat) -> send(performance, seat, segment));
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), REFEREE);
		}
	}

	/** Play a segment judged by points, what is planned for the next one included. */
	void playByPoints(EventView event, SegmentView first, SegmentView free) {
		DemoPerformances files = new DemoPerformances("short");
		this.points.plan(event.id(), first.id(), files);
		this.points.plan(event.id(), free.id(), new DemoPerformances("free"));
		open(first, DrawMethod.WHOLE_FIELD);
		for (PerformanceView performance : this.run.performances(first.id())) {
			this.run.call(performance.id(), performance.version(), REFEREE);
			this.points.call(performance, files);
			this.points.authorise(performance);
			this.panels.judges(event.id()).forEach((seat) -> this.points.send(performance, seat, files));
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), REFEREE);
		}
	}

	/** Send a seat's card from inside. */
	void send(PerformanceView performance, SeatView seat, SegmentView segment) {
		String team = this.entries.entry(performance.entry()).team().name();
		CardMarks marks = PlausibleMarks.of(seat.number(), team, segment.name());
		this.submission.submit(new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1, marks), seat.id(),
				new Actor(seat.label(), "judge", "demo"));
	}

}
