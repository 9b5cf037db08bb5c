package rimebook.tabulation.points;

import org.jspecify.annotations.Nullable;

/**
 * One judge's mark in one line of the sheet.
 *
 * @param judge number of the judge, from 1
 * @param points the mark, or for a grade what the table makes of it; none where absent
 * @param use whether it counts
 */
public record PanelMark(int judge, @Nullable Points points, MarkUse use) {

	boolean isCounted() {
		return this.use == MarkUse.COUNTED;
	}

}
