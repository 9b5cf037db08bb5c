package rimebook.rehearsal;

import java.util.UUID;

import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarkSubmission;
import rimebook.tabulation.CardMarks;

/** The simulated judges of an event judged by placement. */
public class PlacementPanel {

	private final Entries entries;

	private final MarkSubmission submission;

	private final PanelCast cast;

	PlacementPanel(Entries entries, MarkSubmission submission, PanelCast cast) {
		this.entries = entries;
		this.submission = submission;
		this.cast = cast;
	}

	/** What a seat gives a team. */
	CardMarks marks(PerformanceView performance, SeatView seat, SegmentView segment) {
		return PlausibleMarks.of(seat.number(), this.entries.entry(performance.entry()).team().name(), segment.name());
	}

	/** Send a seat's card from inside. */
	public void send(PerformanceView performance, SeatView seat, SegmentView segment) {
		this.submission.submit(new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1,
				marks(performance, seat, segment)), seat.id(), this.cast.judge(seat));
	}

}
