package rimebook.tabulation.points;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.English;

/**
 * The segment total that a team still to skate needs for a place against those who have
 * skated.
 *
 * @param place the place, or a better one; level figures share it
 * @param total smallest total that is enough whatever it is made of; at 0.00 or below
 * every total that is not negative is enough
 * @param orElse a total that is one hundredth lower and enough only with a certain part
 * of it; none where no such total exists
 */
public record ScoreNeeded(int place, Points total, @Nullable OnEqualTotal orElse) {

	/**
	 * Say it in one sentence.
	 * @return for example "1st needs 66.02, or 66.01 with at least 35.86 for the
	 * elements."
	 */
	public String words() {
		return sentence(English.ordinal(this.place));
	}

	/**
	 * As {@link #words()}, and say where the place is.
	 * @param where such as "in the event"
	 */
	public String words(String where) {
		return sentence(English.ordinal(this.place) + " " + where);
	}

	private String sentence(String place) {
		if (this.total.compareTo(Points.ZERO) <= 0) {
			return place + " is reached with any total.";
		}
		return place + " needs " + this.total + ((this.orElse == null) ? "" : this.orElse.words()) + ".";
	}

	/**
	 * A total that ties with the team on the place.
	 *
	 * @param total the equal total
	 * @param part elements or components
	 * @param atLeast what the part must have; exactly this much shares the place
	 */
	public record OnEqualTotal(Points total, Criterion part, Points atLeast) {

		String words() {
			return ", or " + this.total + " with at least " + this.atLeast + " for the "
					+ ((this.part == Criterion.ELEMENT_POINTS) ? "elements" : "components");
		}

	}

}
