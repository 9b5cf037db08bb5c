package rimebook.marks.web;

import java.util.List;
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
import rimebook.marks.PaperKeying;
import rimebook.marks.PerformanceId;
import rimebook.marks.PointsSubmission;
import rimebook.marks.Stand;
import rimebook.marks.StandView;
import rimebook.panels.Panels;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

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

	private final PaperKeying keying;

	KeyingPages(Stand stand, Competitions competitions, RuleSets ruleSets, Panels panels, ElementCalls calls,
			ListAuthorisations authorisations, PointsSubmission cards, DeductionNotes deductions, PaperKeying keying) {
		this.stand = stand;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.panels = panels;
		this.calls = calls;
		this.authorisations = authorisations;
		this.cards = cards;
		this.deductions = deductions;
		this.keying = keying;
	}

	/** Look at a segment as that person may see it. */
	@Transactional(readOnly = true)
	public KeyingPage of(SegmentId segment, Actor viewer) {
		StandView view = this.stand.ofSegment(segment);
		EventView event = view.event();
		PerformanceId onIce = onIce(view);
		boolean points = event.isJudgedByPoints();
		return new KeyingPage(this.competitions.competition(event.competition()), event, view.segment(), view.now(),
				view.next(), points ? this.ruleSets.of(event) : null,
				points ? this.ruleSets.of(event, view.segment()).components() : List.of(),
				this.panels.judges(event.id()),
				(points && onIce != null) ? this.calls.ofPerformance(onIce).orElse(null) : null,
				(points && onIce != null) ? this.authorisations.ofPerformance(onIce).orElse(null) : null,
				(points && onIce != null) ? this.cards.ofPerformance(onIce) : Map.of(),
				(points && onIce != null) ? this.deductions.ofPerformance(onIce).orElse(null) : null,
				(onIce != null) ? this.keying.ofPerformance(onIce, viewer) : List.of(),
				(onIce != null) ? this.keying.lines(onIce) : List.of());
	}

	/**
	 * The same for a segment that must be judged by points.
	 * @throws NotFoundException if it is not
	 */
	@Transactional(readOnly = true)
	public KeyingPage byPoints(SegmentId segment, Actor viewer) {
		KeyingPage page = of(segment, viewer);
		if (page.rules() == null) {
			throw NotFoundException.of("elements", segment);
		}
		return page;
	}

	private static @Nullable PerformanceId onIce(StandView view) {
		StandView.Now now = view.now();
		return (now != null) ? now.row().performance().id() : null;
	}

}
