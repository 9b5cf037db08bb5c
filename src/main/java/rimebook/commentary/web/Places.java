package rimebook.commentary.web;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.live.PublicTelling;

/** The segments to choose from, and where somebody is on the ice. */
@Component
class Places {

	private final Competitions competitions;

	private final PublicTelling telling;

	Places(Competitions competitions, PublicTelling telling) {
		this.competitions = competitions;
		this.telling = telling;
	}

	/**
	 * List them.
	 * @param shown the one that the page is about, {@code null} for none
	 */
	List<Place> of(CompetitionView competition, @Nullable SegmentId shown) {
		List<SegmentId> onIce = this.telling.onIce(competition);
		List<Place> places = new ArrayList<>();
		this.competitions.events(competition.id())
			.forEach((event) -> event.segments()
				.forEach((segment) -> places.add(new Place(segment.id(), event.name(), segment,
						onIce.contains(segment.id()), event.isCancelled(segment.id()), segment.id().equals(shown)))));
		return places;
	}

	/**
	 * A segment.
	 *
	 * @param ice whether a team is on the ice there
	 * @param cancelled whether it does not take place
	 * @param shown whether the page is about it
	 */
	record Place(SegmentId id, String event, SegmentView segment, boolean ice, boolean cancelled, boolean shown) {
	}

}
