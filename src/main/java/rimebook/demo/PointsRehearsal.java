package rimebook.demo;

import java.util.List;
import java.util.UUID;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.PlannedElements;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.points.CalledElement;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsMarks;
import rimebook.points.PointsSubmission;
import rimebook.points.PointsTasks;
import rimebook.shared.Actor;

/** The invented technical panel and judges of an event judged by points. */
@Component
@Profile("demo")
class PointsRehearsal {

	private final Entries entries;

	private final PlannedElements plans;

	private final ElementCalls calls;

	private final ListAuthorisations authorisations;

	private final DeductionNotes deductions;

	private final PointsSubmission cards;

	PointsRehearsal(Entries entries, PlannedElements plans, ElementCalls calls, ListAuthorisations authorisations,
			DeductionNotes deductions, PointsSubmission cards) {
		this.entries = entries;
		this.plans = plans;
		this.calls = calls;
		this.authorisations = authorisations;
		this.deductions = deductions;
		this.cards = cards;
	}

	/** Write down what every team of an event means to skate in a segment. */
	void plan(EventId event, SegmentId segment, DemoPerformances files) {
		this.entries.ofEvent(event)
			.forEach((entry) -> this.plans.plan(new PlannedElements.PlanElements(entry.id(), segment,
					files.plan(entry.team().name()), this.plans.of(entry.id(), segment).version()),
					DemoCrew.SECRETARY));
	}

	/** Call the elements and note the deductions, unless somebody did. */
	void call(PerformanceView performance, DemoPerformances files) {
		String team = team(performance);
		if (this.calls.ofPerformance(performance.id()).isEmpty()) {
			this.calls.call(new ElementCalls.CallElements(performance.id(), 1, files.calls(team)), DemoCrew.TECHNICAL);
		}
		List<DeductionNotes.NoteDeductions.Item> items = files.deductions(team);
		if (!items.isEmpty() && this.deductions.ofPerformance(performance.id()).isEmpty()) {
			this.deductions.note(new DeductionNotes.NoteDeductions(performance.id(), 1, items), DemoCrew.TECHNICAL);
		}
	}

	/** Authorise the elements, unless somebody did or a review is open. */
	void authorise(PerformanceView performance) {
		this.calls.ofPerformance(performance.id())
			.filter((list) -> list.elements().stream().noneMatch(CalledElement::review))
			.ifPresent((list) -> this.authorisations.authorise(performance.id(), list.sequence(), DemoCrew.TECHNICAL));
	}

	/** What a seat gives the elements that are called now. */
	PointsMarks marks(PerformanceView performance, SeatView seat, DemoPerformances files) {
		String team = team(performance);
		List<PointsTasks.PointsTask.Element> called = this.calls.ofPerformance(performance.id())
			.orElseThrow()
			.elements()
			.stream()
			.map((element) -> new PointsTasks.PointsTask.Element(element.id(), element.number(), element.code(), "",
					element.counts()))
			.toList();
		return new PointsMarks(files.grades(team, seat.number(), called), files.components(team, seat.number()));
	}

	/** Send a seat's card from inside, as for the segments that are over at the start. */
	void send(PerformanceView performance, SeatView seat, DemoPerformances files) {
		this.cards.submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), performance.id(), 1,
				marks(performance, seat, files)), seat.id(), new Actor(seat.label(), "judge", "demo"));
	}

	private String team(PerformanceView performance) {
		return this.entries.entry(performance.entry()).team().name();
	}

}
