/** The desk's pages about rulings. */
@NullMarked
package rimebook.rulings.web;

import org.jspecify.annotations.NullMarked;
