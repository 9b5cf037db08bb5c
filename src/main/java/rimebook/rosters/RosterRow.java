package rimebook.rosters;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryView;
import rimebook.wording.Sentence;

/**
 * One row of a file of rosters as it was read.
 *
 * @param line the line on which the row begins, from 1, the header counted
 * @param written the event, team and name as they were written
 * @param order what it means, {@code null} where something is wrong with it
 * @param problems what is wrong with it; empty when it can be taken
 */
public record RosterRow(int line, Written written, @Nullable Order order, List<Problem> problems) {

	public RosterRow {
		problems = List.copyOf(problems);
	}

	/** Tell whether the row can be taken as it is. */
	public boolean isGood() {
		return this.order != null && this.problems.isEmpty();
	}

	/** What a good row means. */
	Order asked() {
		return Objects.requireNonNull(this.order, "A bad row asks for nothing");
	}

	/** Tell whether only the person's word is missing for it to be taken. */
	public boolean isAsked() {
		return !this.problems.isEmpty() && this.problems.stream().allMatch(Problem::isQuestion);
	}

	/** Event, team and name as they were written. */
	public record Written(String event, String team, String name) {
	}

	/**
	 * What a row means.
	 *
	 * @param known who that is, {@code null} for somebody new
	 * @param effect what happens to what is known of them, in a sentence
	 */
	public record Order(EntryView entry, DraftSkater skater, PlaceRole part, @Nullable SkaterView known,
			Sentence effect) {
	}

	/**
	 * What is wrong in one row.
	 *
	 * @param column the column's name, or "row" for the whole of it
	 * @param isQuestion whether nothing is wrong if the person says so
	 */
	public record Problem(String column, Sentence wrong, Sentence expected, boolean isQuestion) {
	}

}
