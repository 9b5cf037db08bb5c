package rimebook.performances;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** The segments of an event that come after one, which may rest on its standing. */
@Component
class LaterSegments {

	private final PerformanceRepository performances;

	private final Competitions competitions;

	LaterSegments(PerformanceRepository performances, Competitions competitions) {
		this.performances = performances;
		this.competitions = competitions;
	}

	/**
	 * Refuse once one of them is open.
	 * @throws ConflictException {@code later-segment-open}
	 */
	void requireNoneOpen(SegmentId segment) {
		after(segment).stream()
			.filter((later) -> this.performances.existsBySegment(later.id().value()))
			.findFirst()
			.ifPresent((later) -> {
				throw new ConflictException("later-segment-open",
						Sentence.of("performances.later-segment-open", later.name()));
			});
	}

	private List<SegmentView> after(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		int position = event.segment(segment).position();
		return event.segments().stream().filter((other) -> other.position() > position).toList();
	}

}
