package rimebook.points;

import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;

/**
 * One act of the technical desk.
 *
 * @param seen the version of the list that was seen, 0 before the first
 * @param element the element it is about; {@code null} to call a new one and to undo
 * @param value the code, or the sign of the level ("B", "1" to "4", empty for no part);
 * empty where none is needed
 */
public record EditList(PerformanceId performance, int seen, ListAct act, @Nullable UUID element, String value) {
}
