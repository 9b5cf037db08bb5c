package rimebook.published;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Hundredths;

/**
 * A team of a published standing with what each judge gave it, for whoever lays it out.
 *
 * @param row as published
 * @param judges what each judge gave, in panel order
 */
public record JudgedRow(Standing.Row row, List<JudgeLine> judges) {

	public JudgedRow {
		judges = List.copyOf(judges);
	}

	/** Read a row of a standing. */
	public static JudgedRow of(Standing.Row row, Standing standing) {
		Integer majority = figure(row, Standing.Figure.MAJORITY_PLACE);
		return new JudgedRow(row,
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

	/** Tell whether a majority stands for first place; nothing is better. */
	public boolean isFirstByMajority() {
		return Objects.equals(figure(Standing.Figure.MAJORITY_PLACE), Hundredths.ONE);
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
	 * What one judge gave one team.
	 *
	 * @param number the judge's number
	 * @param first the first mark in hundredths
	 * @param second the second mark in hundredths
	 * @param total both in hundredths
	 * @param ordinal the place this judge gave in hundredths, {@code null} without one
	 * @param counts whether this judge is one of the majority that made the place
	 */
	public record JudgeLine(int number, int first, int second, int total, @Nullable Integer ordinal, boolean counts) {

		static JudgeLine of(int number, Standing.Card card, @Nullable Integer majority) {
			Integer ordinal = card.ordinalHundredths();
			boolean counts = majority != null && ordinal != null && ordinal <= majority;
			return new JudgeLine(number, card.first(), card.second(), card.first() + card.second(), ordinal, counts);
		}

	}

}
