package rimebook.review;

import rimebook.wording.Sentence;

/**
 * A mark that is pointed out; all in hundredths.
 *
 * @param aspect what it is a mark for
 * @param judge whose it is
 * @param team whose performance it is about
 * @param item which thing of it; empty where there is one only
 * @param given the mark
 * @param others what the other judges gave
 */
public record OutlyingMark(Aspect aspect, ReviewedJudge judge, String team, String item, int given, Others others) {

	static OutlyingMark of(Aspect aspect, ReviewedJudge judge, Compared compared) {
		return new OutlyingMark(aspect, judge, compared.line().team().name(), compared.line().item(), compared.given(),
				new Others(compared.lowest(), compared.highest(),
						Distance.rounded(compared.average(), 0).intValueExact()));
	}

	/** It in a sentence, beside what the others gave. */
	public Sentence spoken() {
		Object what = this.item.isEmpty() ? this.team : Sentence.of("review.outlying.item", this.team, this.item);
		return Sentence.of(key(), this.judge.spoken(), Figure.mark(this.given), what, this.others.spoken(),
				Figure.mark(this.others.average()));
	}

	/** A high place is a low opinion, so places are not said to be more or less. */
	private String key() {
		if (this.aspect == Aspect.PLACE) {
			return "review.outlying.place";
		}
		return (this.given > this.others.highest()) ? "review.outlying.above" : "review.outlying.below";
	}

	/**
	 * What the other judges gave.
	 *
	 * @param average rounded
	 */
	public record Others(int lowest, int highest, int average) {

		Sentence spoken() {
			return (this.lowest == this.highest) ? Figure.mark(this.lowest)
					: Sentence.of("review.outlying.range", Figure.mark(this.lowest), Figure.mark(this.highest));
		}

	}

}
