package rimebook.tabulation;

/** The names of the criteria of placement judging and the form of their values. */
final class CriterionWords {

	private CriterionWords() {
	}

	static String name(Criterion criterion) {
		return switch (criterion) {
			case MAJORITY_PLACE -> "majority place";
			case SIZE_OF_MAJORITY -> "judges at that place or better";
			case TOTAL_OF_MAJORITY -> "total of those ordinals";
			case TOTAL_ORDINALS -> "total of all ordinals";
			case WINS -> "comparisons won";
			case JUDGES_IN_FAVOUR -> "judges in favour";
			default -> throw new IllegalArgumentException(criterion + " is no criterion of placement judging");
		};
	}

	/** Write a value: judges are counted, everything else is hundredths. */
	static String value(Criterion criterion, int value) {
		boolean counted = criterion == Criterion.SIZE_OF_MAJORITY || criterion == Criterion.JUDGES_IN_FAVOUR;
		return counted ? String.valueOf(value) : Hundredths.plain(value);
	}

}
