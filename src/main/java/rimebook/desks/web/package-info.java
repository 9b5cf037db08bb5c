/**
 * The hands of the competition: the judge's card on a tablet, the referee's stand and the
 * announcer's running sheet, and the JSON that tablets speak.
 */
@NullMarked
package rimebook.desks.web;

import org.jspecify.annotations.NullMarked;
