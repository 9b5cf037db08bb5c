/** The desk's pages about music. */
@NullMarked
package rimebook.music.web;

import org.jspecify.annotations.NullMarked;
