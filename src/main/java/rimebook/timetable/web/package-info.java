/**
 * The desk's pages about the timetable: the plan is made, changed and published there.
 */
@NullMarked
package rimebook.timetable.web;

import org.jspecify.annotations.NullMarked;
