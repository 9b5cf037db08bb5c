package rimebook.marks.web;

import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.marks.DeductionNotes;
import rimebook.marks.ElementCalls;
import rimebook.marks.ListAuthorisations;
import rimebook.marks.PerformanceId;
import rimebook.marks.PointsSubmission;
import rimebook.marks.Stand;
import rimebook.marks.StandView;
import rimebook.panels.Panels;

/** Gathers what the keying desk shows. */
@Component
class KeyingPages {

	private final Stand stand;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final Panels panels;

	private final ElementCalls calls;

	private final ListAuthorisations authorisations;

	private final PointsSubmission cards;

	private final DeductionNotes deductions;

	KeyingPages(Stand stand, Competitions competitions, RuleSets ruleSets, Panels panels, ElementCalls calls,
			ListAuthorisations authorisations, PointsSubmission cards, DeductionNotes deductions) {
		this.stand = stand;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.panels = panels;
		this.calls = calls;
		this.authorisations = authorisations;
		this.cards = cards;
		this.deductions = deductions;
	}

	/**
	 * Look at a segment.
	 * @throws rimebook.shared.NotFoundException if it is not judged by points
	 */
	@Transactional(readOnly = true)
	public KeyingPage of(SegmentId segment) {
		StandView view = this.stand.ofSegment(segment);
		EventView event = view.event();
		PerformanceId onIce = onIce(view);
		return new KeyingPage(this.competitions.competition(event.competition()), event, view.segment(), view.now(),
				view.next(), this.ruleSets.of(event), this.ruleSets.of(event, view.segment()).components(),
				this.panels.judges(event.id()), (onIce != null) ? this.calls.ofPerformance(onIce).orElse(null) : null,
				(onIce != null) ? this.authorisations.ofPerformance(onIce).orElse(null) : null,
				(onIce != null) ? this.cards.ofPerformance(onIce) : Map.of(),
				(onIce != null) ? this.deductions.ofPerformance(onIce).orElse(null) : null);
	}

	private static @Nullable PerformanceId onIce(StandView view) {
		StandView.Now now = view.now();
		return (now != null) ? now.row().performance().id() : null;
	}

}
