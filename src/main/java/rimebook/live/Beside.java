package rimebook.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.live.pictures.Differences;
import rimebook.published.Standing;
import rimebook.wording.Sentence;

/**
 * Two teams of a published standing beside each other.
 *
 * @param one the one that is ahead; of two level ones the one that stands first
 * @param other the other
 * @param why why it is ahead, {@link Sentence#NONE} where the rules of today cannot say
 */
record Beside(StandingTable.Line one, StandingTable.Line other, Sentence why) {

	/**
	 * Find two teams.
	 * @return none where they are not both there, or are the same
	 */
	static Optional<Beside> of(StandingTable table, String one, String other, Reasons reasons) {
		List<StandingTable.Line> both = table.lines()
			.stream()
			.filter((line) -> line.row().entry().equals(one) || line.row().entry().equals(other))
			.toList();
		return (both.size() == 2)
				? Optional.of(new Beside(both.get(0), both.get(1),
						reasons.why(table.standing(), both.get(0).row(), both.get(1).row()).orElse(Sentence.NONE)))
				: Optional.empty();
	}

	/** Tell whether they share a place, or neither has one. */
	public boolean isLevel() {
		Integer place = this.one.row().place();
		return (place != null) ? place.equals(this.other.row().place()) : this.other.row().place() == null;
	}

	/**
	 * The figures that are compared one after the other, up to the one that decides; of
	 * level teams all of them.
	 */
	public List<Step> steps() {
		List<Standing.Figure> own = this.one.row().figures();
		List<Standing.Figure> theirs = this.other.row().figures();
		List<Step> steps = new ArrayList<>();
		for (int i = 0; i < Math.min(own.size(), theirs.size()); i++) {
			steps.add(new Step(own.get(i), theirs.get(i)));
			if (steps.get(i).decides()) {
				break;
			}
		}
		return steps;
	}

	/** How their points differ, {@code null} without points of a segment. */
	public @Nullable Differences differences() {
		Standing.Score own = this.one.row().score();
		Standing.Score theirs = this.other.row().score();
		return (own != null && theirs != null) ? Differences.of(own, theirs) : null;
	}

	/** A figure of both. */
	record Step(Standing.Figure own, Standing.Figure theirs) {

		public boolean decides() {
			return this.own.hundredths() != this.theirs.hundredths();
		}

	}

	/** Says why one of two rows is ahead of the other. */
	@FunctionalInterface
	interface Reasons {

		Optional<Sentence> why(Standing said, Standing.Row one, Standing.Row other);

	}

}
