/** The referee's draw and the list of everything that can be drawn. */
@NullMarked
package rimebook.draw.web;

import org.jspecify.annotations.NullMarked;
