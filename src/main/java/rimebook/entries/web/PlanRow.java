package rimebook.entries.web;

import java.util.List;

import rimebook.competition.SegmentView;
import rimebook.entries.ForTheAnnouncer;
import rimebook.wording.Sentence;

/**
 * What a team means to skate in one segment.
 *
 * @param elements in order
 * @param refusal why it can no longer change, empty if it can
 * @param announced what the announcer may tell of it
 * @param asked what the segment asks of it; empty for nothing
 * @param otherwise what of it is otherwise than asked
 */
record PlanRow(SegmentView segment, List<Element> elements, Sentence refusal, ForTheAnnouncer.Announced announced,
		List<Sentence> asked, List<Sentence> otherwise) {

	/** A planned element and its code in words. */
	record Element(String code, String name) {
	}

}
