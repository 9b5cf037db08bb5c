package rimebook.entries;

import rimebook.competition.SegmentId;

/**
 * What a team means to skate in a segment, in place of what was planned before.
 *
 * @param typed the codes in order, with blanks, commas or new lines between them
 * @param version of the plan that was seen
 */
public record PlanElements(EntryId entry, SegmentId segment, String typed, int version) {
}
