package rimebook.review;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Writes figures in hundredths as a language does. */
final class Figure {

	private static final Sentence NONE = Sentence.said("–");

	private Figure() {
	}

	/** With two decimals: 0.87, −0.25, or a dash. */
	static Sentence plain(@Nullable Integer hundredths) {
		return (hundredths != null) ? below(hundredths, size(hundredths)) : NONE;
	}

	/** Without needless decimals: 5.6, 7, −4. */
	static Sentence mark(int hundredths) {
		return below(hundredths, Sentence.of("figure.plain", Math.abs(hundredths)));
	}

	private static Sentence below(int hundredths, Sentence size) {
		return (hundredths < 0) ? Sentence.of("review.signed.minus", size) : size;
	}

	/** With its sign and two decimals: +0.10, −0.25, 0.00, or a dash. */
	static Sentence signed(@Nullable Integer hundredths) {
		return (hundredths != null && hundredths > 0) ? Sentence.of("review.signed.plus", size(hundredths))
				: plain(hundredths);
	}

	private static Sentence size(int hundredths) {
		return Sentence.of("figure.points", Math.abs(hundredths));
	}

}
