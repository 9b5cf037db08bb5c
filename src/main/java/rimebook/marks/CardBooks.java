package rimebook.marks;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;

/** Finds the cards of a segment by the way in which its event is judged. */
@Component
class CardBooks {

	private final Competitions competitions;

	private final PanelCards placement;

	private final PointsBook points;

	CardBooks(Competitions competitions, PanelCards placement, PointsBook points) {
		this.competitions = competitions;
		this.placement = placement;
		this.points = points;
	}

	CardBook of(SegmentId segment) {
		return this.competitions.eventOf(segment).isJudgedByPoints() ? this.points : this.placement;
	}

}
