package rimebook.results;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;

/**
 * The result of a segment, held until the transaction ends.
 *
 * @param all those of all segments of its event, held too
 */
record HeldResult(SegmentResult result, List<SegmentResult> all) {

	/**
	 * Takes hold of results: of all segments of an event, always in one order, so that
	 * versions are numbered without gaps.
	 */
	@Component
	static class Source {

		private final SegmentResultRepository results;

		private final Competitions competitions;

		private final StillOpen stillOpen;

		Source(SegmentResultRepository results, Competitions competitions, StillOpen stillOpen) {
			this.stillOpen = stillOpen;
			this.results = results;
			this.competitions = competitions;
		}

		/** Begin the result of a segment that was just opened. */
		void begin(SegmentId segment) {
			this.results.save(new SegmentResult(segment));
		}

		/**
		 * As {@link #of(SegmentId)}, for a person who was looking at a version of the
		 * result.
		 */
		HeldResult of(SegmentId segment, int version) {
			HeldResult held = of(segment);
			held.result().requireVersion(version);
			return held;
		}

		/**
		 * Take hold of the results of the event for a change of this one.
		 * @throws ConflictException where nothing of the segment may change any more
		 */
		HeldResult of(SegmentId segment) {
			return ifBegun(segment).orElseThrow(() -> NotFoundException.of("segment-result", segment));
		}

		Optional<HeldResult> ifBegun(SegmentId segment) {
			List<SegmentResult> all = ofEvent(this.competitions.eventOf(segment));
			this.stillOpen.require(segment);
			return all.stream()
				.filter((result) -> result.segment().equals(segment))
				.findFirst()
				.map((result) -> new HeldResult(result, all));
		}

		/** Take hold of all results of an event, for a change of none of them. */
		List<SegmentResult> ofEvent(EventId event) {
			return ofEvent(this.competitions.event(event));
		}

		List<SegmentResult> ofEvent(EventView event) {
			return this.results.findLocked(event.segments().stream().map((each) -> each.id().value()).toList());
		}

	}

}
