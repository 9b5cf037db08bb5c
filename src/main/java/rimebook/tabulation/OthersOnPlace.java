package rimebook.tabulation;

import java.util.AbstractList;
import java.util.List;

/**
 * The teams on a place but one of them: a view of one list for all of them, since a copy
 * for each of thousands of level teams would not fit into memory. Never changes.
 */
final class OthersOnPlace extends AbstractList<String> {

	private final List<String> entries;

	private final int without;

	/**
	 * Leave one out.
	 * @param entries all teams on the place, a list that cannot be changed
	 * @param without index of the one
	 */
	OthersOnPlace(List<String> entries, int without) {
		this.entries = entries;
		this.without = without;
	}

	@Override
	public String get(int index) {
		return this.entries.get((index < this.without) ? index : index + 1);
	}

	@Override
	public int size() {
		return this.entries.size() - 1;
	}

}
