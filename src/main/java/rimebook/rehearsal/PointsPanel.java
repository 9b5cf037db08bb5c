package rimebook.rehearsal;

import java.util.List;
import java.util.UUID;

import rimebook.entries.Entries;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.points.CalledElement;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsMarks;
import rimebook.points.PointsSubmission;
import rimebook.points.PointsTasks;

/** The simulated technical panel and judges of an event judged by points. */
public class PointsPanel {

	private final Entries entries;

	private final ElementCalls calls;

	private final ListAuthorisations authorisations;

	private final DeductionNotes deductions;

	private final PointsSubmission cards;

	private final PanelCast cast;

	PointsPanel(Entries entries, ElementCalls calls, ListAuthorisations authorisations, DeductionNotes deductions,
			PointsSubmission cards, PanelCast cast) {
		this.entries = entries;
		this.calls = calls;
		this.authorisations = authorisations;
		this.deductions = deductions;
		this.cards = cards;
		this.cast = cast;
	}

	/** Call the elements and note the deductions, unless somebody did. */
	public void call(PerformanceView performance, PointsScript script) {
		String team = team(performance);
		if (this.calls.ofPerformance(performance.id()).isEmpty()) {
			this.calls.call(new ElementCalls.CallElements(performance.id(), 1, script.calls(team)),
					this.cast.technical());
		}
		List<DeductionNotes.NoteDeductions.Item> items = script.deductions(team);
		if (!items.isEmpty() && this.deductions.ofPerformance(performance.id()).isEmpty()) {
			this.deductions.note(new DeductionNotes.NoteDeductions(performance.id(), 1, items), this.cast.technical());
		}
	}

	/** Tell whether somebody called elements. */
	boolean isCalled(PerformanceView performance) {
		return this.calls.ofPerformance(performance.id()).isPresent();
	}

	/** Authorise the elements, unless somebody did or a review is open. */
	public void authorise(PerformanceView performance) {
		this.calls.ofPerformance(performance.id())
			.filter((list) -> list.elements().stream().noneMatch(CalledElement::review))
			.ifPresent(
					(list) -> this.authorisations.authorise(performance.id(), list.sequence(), this.cast.technical()));
	}

	/** What a seat gives the elements that are called now. */
	PointsMarks marks(PerformanceView performance, SeatView seat, PointsScript script) {
		String team = team(performance);
		List<PointsTasks.PointsTask.Element> called = this.calls.ofPerformance(performance.id())
			.orElseThrow()
			.elements()
			.stream()
			.map((element) -> new PointsTasks.PointsTask.Element(element.id(), element.number(), element.code(), "",
					element.counts()))
			.toList();
		return new PointsMarks(script.grades(team, seat.number(), called), script.components(team, seat.number()));
	}

	/** Send a seat's card from inside, as for the segments that are over at the start. */
	public void send(PerformanceView performance, SeatView seat, PointsScript script) {
		this.cards.submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), performance.id(), 1,
				marks(performance, seat, script)), seat.id(), this.cast.judge(seat));
	}

	private String team(PerformanceView performance) {
		return this.entries.entry(performance.entry()).team().name();
	}

}
