/**
 * The picture that goes with the address of a standing wherever somebody passes it on.
 * Letters are drawn from the outlines of a typeface that comes along, so that a machine
 * without any typeface draws the same.
 */
@NullMarked
package rimebook.live.share;

import org.jspecify.annotations.NullMarked;
