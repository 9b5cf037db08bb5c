/**
 * Pictures of a published standing: where each stroke lies, in parts of the room that the
 * page gives it. Templates draw them as SVG, with the figures behind them as a table.
 */
@NullMarked
package rimebook.live.pictures;

import org.jspecify.annotations.NullMarked;
