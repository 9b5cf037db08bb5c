package rimebook.stand.web;

import java.util.List;

import rimebook.entries.EntryView;
import rimebook.rulings.QuestionView;

/**
 * One line for the announcer.
 *
 * @param spokenAs how the name is said, the name itself where nothing else is known
 * @param mark how it stands: now, next, waiting, done or gap
 * @param rulings for the team in this segment
 */
record SheetRow(int number, int group, String team, String spokenAs, String club, String town, String mark,
		List<QuestionView> rulings) {

	static SheetRow of(int number, int group, EntryView entry, String mark, List<QuestionView> rulings) {
		String name = entry.team().name();
		String said = entry.team().spokenAs();
		return new SheetRow(number, group, name, said.isBlank() ? name : said, entry.team().club().name(),
				entry.team().club().town(), mark, rulings);
	}

	/** The same lines, that number marked as next. */
	static List<SheetRow> withNext(List<SheetRow> rows, int next) {
		return rows.stream().map((row) -> (row.number == next) ? row.asNext() : row).toList();
	}

	private SheetRow asNext() {
		return new SheetRow(this.number, this.group, this.team, this.spokenAs, this.club, this.town, "next",
				this.rulings);
	}

	boolean isWaiting() {
		return this.mark.equals("waiting");
	}

	/** Tell whether the announcer needs to be told how to say the name. */
	public boolean isSpokenOtherwise() {
		return !this.spokenAs.equals(this.team);
	}

}
