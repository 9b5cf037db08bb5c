package rimebook.live;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.competition.JudgingMethod;
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
	 * @param row as published
	 * @param change how it moved
	 * @param judges what each judge gave, in panel order
	 */
	record Line(Standing.Row row, Change change, List<JudgeLine> judges) {

		static Line of(Standing.Row row, Standing standing) {
			Integer majority = figure(row, Standing.Figure.MAJORITY_PLACE);
			return new Line(row, Change.of(row),
					IntStream.range(0, row.cards().size())
						.mapToObj((i) -> JudgeLine.of(standing.judgeNumbers().get(i), row.cards().get(i), majority))
						.toList());
		}

		/** A figure by its code in hundredths, {@code null} where the row has none. */
		public @Nullable Integer figure(String code) {
			return figure(this.row, code);
		}

		/** The same as a number, for words that differ by it. */
		public @Nullable BigDecimal number(String code) {
			Integer hundredths = figure(code);
			return (hundredths != null) ? BigDecimal.valueOf(hundredths, 2) : null;
		}

		/** The key of the words for its majority; nothing is better than 1st. */
		public String majorityKey() {
			boolean first = Objects.equals(figure(Standing.Figure.MAJORITY_PLACE), Hundredths.ONE);
			return first ? "live.decided.majority.first" : "live.decided.majority";
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

		private static @Nullable Integer figure(Standing.Row row, String code) {
			return row.figures()
				.stream()
				.filter((figure) -> figure.code().equals(code))
				.map(Standing.Figure::hundredths)
				.findFirst()
				.orElse(null);
		}

		/**
		 * The key of the words for a team that is not simply placed, empty for one that
		 * is.
		 */
		public String statusKey() {
			return this.row.has(EntryStatus.SKATED) ? ""
					: "live.status." + this.row.status().toLowerCase(Locale.ROOT).replace('_', '-');
		}

	}

	/**
	 * What one judge gave one team.
	 *
	 * @param number the judge's number
	 * @param first the first mark in hundredths
	 * @param second the second mark in hundredths
	 * @param total both in hundredths
	 * @param ordinal the place this judge gave in hundredths, {@code null} without one
	 * @param counts whether this judge is one of the majority that made the place
	 */
	record JudgeLine(int number, int first, int second, int total, @Nullable Integer ordinal, boolean counts) {

		static JudgeLine of(int number, Standing.Card card, @Nullable Integer majority) {
			Integer ordinal = card.ordinalHundredths();
			boolean counts = majority != null && ordinal != null && ordinal <= majority;
			return new JudgeLine(number, card.first(), card.second(), card.first() + card.second(), ordinal, counts);
		}

	}

}
