package rimebook.tabulation;

import java.util.Locale;

import rimebook.wording.Sentence;

/** The names of the criteria of placement judging and the form of their values. */
final class CriterionWords {

	private CriterionWords() {
	}

	/** Name a criterion of placement judging. */
	static Sentence name(Criterion criterion) {
		return Sentence.of("why.criterion." + criterion.name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

	/** Write a value: judges are counted, everything else is hundredths. */
	static Sentence value(Criterion criterion, int value) {
		boolean counted = criterion == Criterion.SIZE_OF_MAJORITY || criterion == Criterion.JUDGES_IN_FAVOUR;
		return Phrases.plain(counted ? value * Hundredths.ONE : value);
	}

}
