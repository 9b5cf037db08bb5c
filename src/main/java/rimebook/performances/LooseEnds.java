package rimebook.performances;

import java.util.List;
import java.util.Optional;

import rimebook.competition.SegmentId;
import rimebook.wording.Sentence;

/** Tells what may still wait behind the performances of a segment. */
public interface LooseEnds {

	/** What there is to settle in a segment; empty where it is of no concern. */
	Optional<LooseEnd> of(SegmentId segment);

	/**
	 * Something that has to be settled before the result of a segment is signed.
	 *
	 * @param name what it is known by
	 * @param settled says that nothing waits
	 * @param open what waits, one sentence each without its stop; empty for nothing
	 */
	record LooseEnd(String name, Sentence settled, List<Sentence> open) {

		public LooseEnd {
			open = List.copyOf(open);
		}

	}

}
