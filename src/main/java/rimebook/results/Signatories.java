package rimebook.results;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;

/** Tells who signs, as the panel stands now. */
@Service
public class Signatories {

	private final Competitions competitions;

	private final Panels panels;

	Signatories(Competitions competitions, Panels panels) {
		this.competitions = competitions;
		this.panels = panels;
	}

	/**
	 * Who signs the result of a segment.
	 * @throws rimebook.shared.NotFoundException if there is no such segment
	 */
	@Transactional(readOnly = true)
	public SeatedSignatories of(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		return new SeatedSignatories(event.id(), event.name(), seated(event.id(), SeatKind.REFEREE),
				seated(event.id(), SeatKind.ACCOUNTANT));
	}

	private String seated(EventId event, SeatKind kind) {
		return this.panels.seated(event, kind).map(OfficialView::name).orElse("");
	}

}
