/**
 * What tests of every module share: competitions and their people, browsers, races,
 * PostgreSQL in a container, conditions for what a machine may lack, and the line that
 * says what was skipped for that.
 */
@NullMarked
package rimebook.testsupport;

import org.jspecify.annotations.NullMarked;
