/** The competition desk: pages for competitions and their events. */
@NullMarked
package rimebook.competition.web;

import org.jspecify.annotations.NullMarked;
