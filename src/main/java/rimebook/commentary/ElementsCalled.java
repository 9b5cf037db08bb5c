package rimebook.commentary;

import java.util.List;
import java.util.Set;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * Tells which elements of the team on the ice were called so far: which ones and no more,
 * neither level nor review nor value, since these are not public before the cards are
 * closed. A later module that knows declares the bean; only whom the referee lets see it
 * is told.
 */
@FunctionalInterface
public interface ElementsCalled {

	/** What was called of a team in a segment that it is skating now. */
	CalledSoFar of(SegmentId segment, EntryId entry);

	/**
	 * What was called so far.
	 *
	 * @param elements the sign of each in the order skated, without level
	 * @param ofPlan the numbers of the planned elements that were among them, from 1
	 */
	record CalledSoFar(List<String> elements, Set<Integer> ofPlan) {

		/** Nothing was called, or nobody may tell. */
		public static final CalledSoFar NOTHING = new CalledSoFar(List.of(), Set.of());

		public CalledSoFar {
			elements = List.copyOf(elements);
			ofPlan = Set.copyOf(ofPlan);
		}

	}

}
