package rimebook.review;

import java.util.Locale;

import rimebook.wording.Sentence;

/**
 * What of a judge's card is compared with that of the other judges.
 * <p>
 * The limit from which a mark is pointed out is this house's choice and stands in no
 * rulebook.
 */
public enum Aspect {

	/** The places that the judge's marks gave the teams; placement judging. */
	PLACE(200),

	/** The first mark; placement judging. */
	FIRST_MARK(30),

	/** The second mark; placement judging. */
	SECOND_MARK(30),

	/** The grades of the elements that count; points judging. */
	GRADE(200),

	/** The components; points judging. */
	COMPONENT(100);

	private final int limit;

	Aspect(int limit) {
		this.limit = limit;
	}

	/** How far above or below all others a mark is pointed out, in hundredths. */
	public int limit() {
		return this.limit;
	}

	/** What it is called where several segments are taken together. */
	public Sentence spoken() {
		return Sentence.of("review.aspect." + word());
	}

	/** Its name in files: "first-mark". */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}
