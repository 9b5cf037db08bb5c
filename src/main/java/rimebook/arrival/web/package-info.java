/** The pages for the door. */
@NullMarked
package rimebook.arrival.web;

import org.jspecify.annotations.NullMarked;
