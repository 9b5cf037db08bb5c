package rimebook.tabulation;

import java.util.stream.Stream;

/** Words of the majority system. */
record MajorityWords(Figures.MajorityFigures figures, int judges) implements Reason.ReasonWords {

	@Override
	public String own(Reason reason) {
		boolean byTotalOrdinals = needs(reason, Criterion.TOTAL_ORDINALS);
		boolean byTotalOfMajority = byTotalOrdinals || needs(reason, Criterion.TOTAL_OF_MAJORITY);
		return who() + " had them " + English.orBetter(this.figures.majorityPlace())
				+ (byTotalOfMajority ? ", total of those ordinals " + Hundredths.plain(this.figures.totalOfMajority())
						: "")
				+ (byTotalOrdinals ? ", total of all ordinals " + Hundredths.plain(this.figures.totalOrdinals()) : "");
	}

	private String who() {
		if (this.judges == 1) {
			return "the only judge";
		}
		return (this.figures.size() == this.judges) ? "all " + English.number(this.judges) + " judges"
				: English.number(this.figures.size()) + " of " + English.number(this.judges) + " judges";
	}

	private static boolean needs(Reason reason, Criterion criterion) {
		return !reason.sharedWith().isEmpty() || Stream.of(reason.better(), reason.worse())
			.anyMatch((comparison) -> comparison != null && comparison.criterion() == criterion);
	}

	@Override
	public String rivals(Reason.Comparison comparison) {
		return switch (comparison.criterion()) {
			case MAJORITY_PLACE -> "whose majority was for " + English.orBetter(comparison.theirs());
			case SIZE_OF_MAJORITY -> "who had " + English.count(comparison.theirs(), "judge") + " for "
					+ English.orBetter(this.figures.majorityPlace());
			case TOTAL_OF_MAJORITY ->
				"who had the same majority with a total of " + Hundredths.plain(comparison.theirs());
			default -> "who had the same majority and total but " + Hundredths.plain(comparison.theirs())
					+ " over all ordinals";
		};
	}

}
