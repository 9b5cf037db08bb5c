/**
 * The referee’s stand and the announcer’s running sheet.
 */
@NullMarked
package rimebook.stand.web;

import org.jspecify.annotations.NullMarked;
