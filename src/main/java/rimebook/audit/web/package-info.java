/**
 * The page on which the crew reads the record and checks its chain.
 */
@NullMarked
package rimebook.audit.web;

import org.jspecify.annotations.NullMarked;
