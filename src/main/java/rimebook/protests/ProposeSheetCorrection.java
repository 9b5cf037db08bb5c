package rimebook.protests;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;
import rimebook.points.SheetLine;

/**
 * What one official asks another to approve: another element or deduction in one place.
 *
 * @param line which place
 * @param corrected what shall count, as in {@link SheetLine}
 * @param agreed the officials of the technical panel who agree, by name
 * @param reason what was typed wrongly
 */
public record ProposeSheetCorrection(PerformanceId performance, SheetLine line, String corrected, String agreed,
		String reason, @Nullable ProtestId protest) {
}
