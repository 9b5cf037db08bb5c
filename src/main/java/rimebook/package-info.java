/**
 * Rimebook: carries a synchronized-skating competition from entries to a signed, archived
 * result. One package per feature; the arrows between them stand in each
 * {@code package-info.java}.
 */
@NullMarked
package rimebook;

import org.jspecify.annotations.NullMarked;
