/**
 * The pages of a team's managers, and the desk page where their links are given out.
 */
@NullMarked
package rimebook.managers.web;

import org.jspecify.annotations.NullMarked;
