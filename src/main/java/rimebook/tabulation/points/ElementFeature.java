package rimebook.tabulation.points;

/**
 * A second called part of an element with a level of its own, such as {@code pi}, the
 * point of intersection of {@code I}. Element and feature are one row of the table: two
 * values are never added.
 *
 * @param sign how it is written in a code
 * @param level its level
 */
public record ElementFeature(String sign, ElementLevel level) {

}
