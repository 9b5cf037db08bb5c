package rimebook.review;

import java.util.List;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;

/**
 * How the judges of a competition agree with their panels.
 *
 * @param events those with a published standing, in their order
 * @param official whether every segment looked at is signed
 * @param together all segments taken together, person by person
 */
public record CompetitionReview(CompetitionView competition, List<EventView> events, boolean official,
		List<AspectReview> together) {

	public CompetitionReview {
		events = List.copyOf(events);
		together = List.copyOf(together);
	}

}
