/** The pages of the register of officials, of panels and of seat slips. */
@NullMarked
package rimebook.panels.web;

import org.jspecify.annotations.NullMarked;
