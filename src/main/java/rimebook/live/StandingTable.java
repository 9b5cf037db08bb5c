package rimebook.live;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.competition.JudgingMethod;
import rimebook.published.JudgedRow;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Hundredths;

/**
 * A published version laid out for a page.
 *
 * @param version the version
 * @param lines its rows in order
 */
record StandingTable(ResultVersion version, List<Line> lines) {

	static StandingTable of(ResultVersion version) {
		return new StandingTable(version,
				version.standing().rows().stream().map((row) -> Line.of(row, version.standing())).toList());
	}

	public Standing standing() {
		return this.version.standing();
	}

	public boolean isOfficial() {
		return this.version.state() == ResultVersion.ResultState.OFFICIAL;
	}

	public boolean isCombined() {
		return !this.version.standing().segments().isEmpty();
	}

	/** Tell whether the teams have points and not ordinals. */
	public boolean isPoints() {
		return this.version.standing().isByPoints();
	}

	/** The class of its layout in the style sheet. */
	public String look() {
		String kind = isPoints() ? " points" : "";
		return (isCombined() ? "combined" : isPoints() ? "scored" : "judged") + kind;
	}

	public boolean isMajority() {
		return this.version.standing().judgedBy().equals(JudgingMethod.MAJORITY);
	}

	/**
	 * Tell whether it differs from the version before for another reason than a skate.
	 */
	public boolean isRevised() {
		return this.version.cause() == ResultVersion.Cause.CORRECTED
				|| this.version.cause() == ResultVersion.Cause.REOPENED
				|| this.version.cause() == ResultVersion.Cause.PANEL
				|| this.version.cause() == ResultVersion.Cause.CANCELLED;
	}

	/** The team in first place, {@code null} before anybody has a place. */
	public Standing.@Nullable Row leader() {
		return this.lines.stream().map(Line::row).filter((row) -> row.place() != null).findFirst().orElse(null);
	}

	/**
	 * One team.
	 *
	 * @param judged as published, with what each judge gave
	 * @param change how it moved
	 */
	record Line(JudgedRow judged, Change change) {

		static Line of(Standing.Row row, Standing standing) {
			return new Line(JudgedRow.of(row, standing), Change.of(row));
		}

		public Standing.Row row() {
			return this.judged.row();
		}

		/** What each judge gave, in panel order. */
		public List<JudgedRow.JudgeLine> judges() {
			return this.judged.judges();
		}

		/** A figure by its code in hundredths, {@code null} where the row has none. */
		public @Nullable Integer figure(String code) {
			return this.judged.figure(code);
		}

		/** The same as a number, for words that differ by it. */
		public @Nullable BigDecimal number(String code) {
			return this.judged.number(code);
		}

		/** The key of the words for its majority; nothing is better than 1st. */
		public String majorityKey() {
			return this.judged.isFirstByMajority() ? "live.decided.majority.first" : "live.decided.majority";
		}

		/** The key of the words for the value of a figure. */
		public String valueKey(Standing.Figure figure) {
			boolean first = isPlace(figure) && figure.hundredths() == Hundredths.ONE;
			return "live.figure." + figure.code() + (first ? ".first" : ".value");
		}

		/** Tell whether a figure is a place and not a number. */
		public boolean isPlace(Standing.Figure figure) {
			return figure.code().equals(Standing.Figure.MAJORITY_PLACE);
		}

		/**
		 * The key of the words for a team that is not simply placed, empty for one that
		 * is.
		 */
		public String statusKey() {
			return row().has(EntryStatus.SKATED) ? ""
					: "live.status." + row().status().toLowerCase(Locale.ROOT).replace('_', '-');
		}

	}

}
