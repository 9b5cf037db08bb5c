package rimebook.live;

import java.util.ArrayList;
import java.util.List;

/** Cuts what does not fit on a big screen into sheets that are shown in turn. */
final class Sheets {

	private Sheets() {
	}

	/**
	 * Cut a list.
	 * @param each how many fit on a sheet
	 */
	static <T> List<Sheet<T>> of(List<T> all, int each) {
		int sheets = (all.size() + each - 1) / each;
		List<Sheet<T>> cut = new ArrayList<>();
		for (int i = 0; i < sheets; i++) {
			cut.add(new Sheet<>(i + 1, sheets, all.subList(i * each, Math.min(all.size(), (i + 1) * each))));
		}
		return cut;
	}

	/**
	 * A sheet.
	 *
	 * @param number 1 for the first
	 * @param of how many there are
	 */
	record Sheet<T>(int number, int of, List<T> rows) {

		Sheet {
			rows = List.copyOf(rows);
		}

	}

}
