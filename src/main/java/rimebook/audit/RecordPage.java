package rimebook.audit;

import java.util.List;

/**
 * Some lines of the record, the newest first.
 *
 * @param lines the lines of this page
 * @param found how many lines fit in all
 * @param pages how many pages they fill, at least 1
 */
public record RecordPage(List<RecordLine> lines, long found, long pages) {

	static RecordPage of(List<RecordLine> lines, long found) {
		long pages = Math.max(1, (found + RecordQuery.PAGE_LENGTH - 1) / RecordQuery.PAGE_LENGTH);
		return new RecordPage(List.copyOf(lines), found, pages);
	}

}
