/** The pages of rosters and eligibility. */
@NullMarked
package rimebook.rosters.web;

import org.jspecify.annotations.NullMarked;
