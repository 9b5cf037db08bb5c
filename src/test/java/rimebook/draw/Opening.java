package rimebook.draw;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;

/** Stands for the run of a segment: refuses the draw of the one that is open. */
class Opening implements StartingOrderDraw.Guard {

	@Nullable SegmentId open;

	@Override
	public Optional<String> refusal(SegmentId segment) {
		return segment.equals(this.open) ? Optional.of("The segment is open.") : Optional.empty();
	}

}
