package rimebook.review;

import rimebook.wording.Sentence;

/**
 * Whose marks they are. People are told apart by the names they sat under, so that a
 * judge who has another number in another event stays the same.
 *
 * @param number the judge's number on the panel
 * @param name empty where nobody is written down for the seat
 * @param substitute whether the substitute had taken over that number
 */
public record ReviewedJudge(int number, String name, boolean substitute) {

	/** The seat in words: "Judge 3". */
	public Sentence seat() {
		return Sentence.of(this.substitute ? "review.judge.substitute" : "review.judge.seat", this.number);
	}

	/** Seat and name in one: "Judge 3, Ada Hart". */
	public Sentence spoken() {
		return this.name.isEmpty() ? seat() : Sentence.of("review.judge.named", seat(), this.name);
	}

}
