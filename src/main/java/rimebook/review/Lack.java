package rimebook.review;

import java.util.Locale;

import rimebook.wording.Sentence;

/** Why there is no figure for how far two orders agree. */
public enum Lack {

	/** The judge gave nothing that counts. */
	NO_MARKS,

	/** Nobody else gave anything. */
	NO_OTHERS,

	/** One team has no order. */
	ONE_TEAM,

	/** The judge has every team level, so that there is no order of theirs. */
	JUDGE_LEVEL,

	/** The others have every team level on average. */
	OTHERS_LEVEL;

	/** The reason in a sentence. */
	public Sentence spoken() {
		return Sentence.of("review.lack." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

}
