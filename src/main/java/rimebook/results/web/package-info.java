/** Pages of the results desk. */
@NullMarked
package rimebook.results.web;

import org.jspecify.annotations.NullMarked;
