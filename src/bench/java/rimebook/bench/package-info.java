/** Benchmarks of the judging methods; they are built and run in the profile {@code bench} only. */
@NullMarked
package rimebook.bench;

import org.jspecify.annotations.NullMarked;
