/** Pages of the panel review. */
@NullMarked
package rimebook.review.web;

import org.jspecify.annotations.NullMarked;
