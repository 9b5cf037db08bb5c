package rimebook.review;

import java.time.Instant;
import java.util.List;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.results.ResultVersion;

/**
 * How far the judges of a panel agree, for the referee, to learn from. It is made anew
 * from what was published each time it is asked for. Never shown to judges, teams or the
 * public.
 */
@Service
@Transactional(readOnly = true)
public class PanelReviews {

	private final Competitions competitions;

	private final MeasuredSegments segments;

	PanelReviews(Competitions competitions, MeasuredSegments segments) {
		this.competitions = competitions;
		this.segments = segments;
	}

	/**
	 * Look at the panel of an event as it is now.
	 * @throws rimebook.shared.NotFoundException if there is no such event
	 */
	public EventReview of(EventId id) {
		EventView event = this.competitions.event(id);
		return review(event, this.segments.of(event));
	}

	/**
	 * Look at the panel of an event as it was in a version of its standing. What is said
	 * of a version stays the same.
	 */
	public EventReview of(ResultVersion combined) {
		EventView event = this.competitions.event(new EventId(combined.scopeId()));
		return review(event, this.segments.of(event, combined));
	}

	private EventReview review(EventView event, List<MeasuredSegment> measured) {
		return new EventReview(this.competitions.competition(event.competition()), event,
				measured.stream().map(MeasuredSegment::view).toList(),
				(measured.size() > 1) ? Together.of(measured) : List.of());
	}

	/**
	 * Look at all panels of a competition as they are now.
	 * @throws rimebook.shared.NotFoundException if there is no such competition
	 */
	public CompetitionReview of(CompetitionId id) {
		return review(id, this.segments.of(id));
	}

	/**
	 * Look at all panels of a competition as they were at a moment, UTC.
	 * @throws rimebook.shared.NotFoundException if there is no such competition
	 */
	public CompetitionReview of(CompetitionId id, Instant moment) {
		return review(id, this.segments.of(id, moment));
	}

	private CompetitionReview review(CompetitionId id, List<MeasuredSegment> measured) {
		return new CompetitionReview(this.competitions.competition(id),
				measured.stream().map(MeasuredSegment::event).distinct().toList(),
				measured.stream().allMatch(MeasuredSegment::isOfficial), Together.of(measured));
	}

}
