package rimebook.live.pictures;

import java.util.List;
import java.util.stream.IntStream;

import rimebook.published.JudgedRow;
import rimebook.published.Standing;

/**
 * The place that each judge gave each team, a column a judge. Where places go by majority
 * those of the majority are marked.
 *
 * @param judges the numbers of the judges
 * @param teams a row a team that was marked, in place order
 */
public record Grid(List<Integer> judges, List<Row> teams) {

	public Grid {
		judges = List.copyOf(judges);
		teams = List.copyOf(teams);
	}

	/** Draw a segment's standing. */
	public static Grid of(Standing standing) {
		return new Grid(standing.judgeNumbers(),
				standing.rows()
					.stream()
					.map((row) -> JudgedRow.of(row, standing))
					.filter((row) -> row.judges().stream().anyMatch((judge) -> judge.ordinal() != null))
					.map(Row::of)
					.toList());
	}

	/** One team. */
	public record Row(Standing.Row row, List<Cell> cells) {

		public Row {
			cells = List.copyOf(cells);
		}

		static Row of(JudgedRow row) {
			int judges = row.judges().size();
			return new Row(row.row(),
					IntStream.range(0, judges).mapToObj((i) -> Cell.of(row.judges().get(i), i, judges)).toList());
		}

	}

	/**
	 * What one judge gave.
	 *
	 * @param middle where the words stand
	 */
	public record Cell(JudgedRow.JudgeLine judge, Bar bar, String middle) {

		static Cell of(JudgedRow.JudgeLine judge, int at, int judges) {
			return new Cell(judge, Bar.lying(Percent.of(20L * at + 1, 20L * judges), Percent.of(18, 20L * judges),
					judge.counts() ? "counts" : "open"), Percent.of(2L * at + 1, 2L * judges));
		}

	}

}
