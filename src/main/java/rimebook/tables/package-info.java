/**
 * Tables that people bring from their spreadsheets, whatever signs, encodings and names
 * of columns these write.
 */
@ApplicationModule(allowedDependencies = { "shared", "wording" })
@NullMarked
package rimebook.tables;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
