/** The entries desk: the teams of each event, by hand and from a file. */
@NullMarked
package rimebook.entries.web;

import org.jspecify.annotations.NullMarked;
