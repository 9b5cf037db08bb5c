/**
 * What tests of every module share: PostgreSQL in a container, conditions for what a
 * machine may lack, and the line that says what was skipped for that.
 */
@NullMarked
package rimebook.testsupport;

import org.jspecify.annotations.NullMarked;
