/** Pages of letters: what they say, to whom they go, and what became of them. */
@NullMarked
package rimebook.letters.web;

import org.jspecify.annotations.NullMarked;
