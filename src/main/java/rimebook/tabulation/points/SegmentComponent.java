package rimebook.tabulation.points;

import rimebook.tabulation.SegmentKind;

/**
 * A component as it counts in one segment at one level of skating.
 *
 * @param segment short or free
 * @param level for example "senior"
 * @param rule name and factor
 */
public record SegmentComponent(SegmentKind segment, String level, ComponentRule rule) {

}
