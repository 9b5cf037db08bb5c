/** Pages of protests and corrections. */
@NullMarked
package rimebook.protests.web;

import org.jspecify.annotations.NullMarked;
