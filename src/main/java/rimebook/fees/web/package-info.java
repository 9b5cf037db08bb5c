/** The desk's pages about fees. */
@NullMarked
package rimebook.fees.web;

import org.jspecify.annotations.NullMarked;
