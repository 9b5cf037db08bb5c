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

	/** Write a value as the criterion counts it: points, totals, or whole numbers. */
	static Sentence value(Criterion criterion, int value) {
		return switch (criterion) {
			case SIZE_OF_MAJORITY, JUDGES_IN_FAVOUR, EVERY_SEGMENT, LAST_SEGMENT_PLACE, SEGMENT_REACHED,
					PLACE_IN_SEGMENT_REACHED, SEGMENTS_SKATED ->
				Phrases.plain(value * Hundredths.ONE);
			case FACTORED_TOTAL, TOTAL_SO_FAR -> Phrases.decimal(value);
			case TOTAL_POINTS, ELEMENT_POINTS, COMPONENT_POINTS, LAST_SEGMENT_POINTS ->
				Sentence.of("figure.points", value);
			default -> Phrases.plain(value);
		};
	}

}
