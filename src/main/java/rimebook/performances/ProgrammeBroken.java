package rimebook.performances;

import rimebook.competition.SegmentId;

/**
 * The programme on the ice was broken off, or is no longer.
 *
 * @param interrupted whether it is broken off now
 */
public record ProgrammeBroken(SegmentId segment, boolean interrupted) {

}
