package rimebook.draw;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.wording.Sentence;

/** Stands for the run of a segment: refuses the draw of the one that is open. */
class Opening implements StartingOrderDraw.Guard {

	@Nullable SegmentId open;

	@Override
	public Optional<Sentence> refusal(SegmentId segment) {
		return segment.equals(this.open) ? Optional.of(Sentence.said("The segment is open.")) : Optional.empty();
	}

}
