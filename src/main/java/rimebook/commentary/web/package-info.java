/**
 * The commentator's page, and the desk page where its links are given out.
 */
@NullMarked
package rimebook.commentary.web;

import org.jspecify.annotations.NullMarked;
