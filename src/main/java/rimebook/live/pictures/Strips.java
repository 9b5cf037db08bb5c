package rimebook.live.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import rimebook.competition.JudgingMethod;
import rimebook.published.JudgedRow;
import rimebook.published.Standing;

/**
 * What each judge gave each team, a bar a judge: the higher the mark, the higher the bar.
 * In placement judging the sum of both marks, filled where the judge is one of the
 * majority; in points judging the marks of each component, filled where they count.
 *
 * @param least the lowest of all, in hundredths
 * @param most the highest of all, in hundredths
 * @param teams a strip a team that was marked, in place order
 */
public record Strips(int least, int most, List<Strip> teams) {

	/** So that the lowest of all is still to be seen. */
	private static final int FOOT = 15;

	public Strips {
		teams = List.copyOf(teams);
	}

	/** Draw a segment's standing. */
	public static Strips of(Standing standing) {
		List<Given> given = standing.rows()
			.stream()
			.map((row) -> standing.isByPoints() ? components(row) : totals(row, standing))
			.filter((one) -> !one.marks().isEmpty())
			.toList();
		List<Integer> all = given.stream().flatMap((one) -> one.marks().stream()).map(Mark::hundredths).toList();
		int least = all.stream().mapToInt(Integer::intValue).min().orElse(0);
		int most = all.stream().mapToInt(Integer::intValue).max().orElse(0);
		return new Strips(least, most, given.stream().map((one) -> one.drawn(least, most)).toList());
	}

	private static Given totals(Standing.Row row, Standing standing) {
		List<JudgedRow.JudgeLine> judges = JudgedRow.of(row, standing).judges();
		return new Given(row, IntStream.range(0, judges.size()).mapToObj((i) -> {
			JudgedRow.JudgeLine judge = judges.get(i);
			return new Mark(i, judge.number(), judge.total(), judge.counts() || !isMajority(standing));
		}).toList(), judges.size());
	}

	/** In comparisons one by one every judge counts. */
	private static boolean isMajority(Standing standing) {
		return standing.judgedBy().equals(JudgingMethod.MAJORITY);
	}

	private static Given components(Standing.Row row) {
		Standing.Score score = row.score();
		List<Mark> marks = new ArrayList<>();
		if (score == null) {
			return new Given(row, marks, 0);
		}
		int at = 0;
		for (Standing.Score.ComponentLine line : score.componentLines()) {
			for (int judge = 0; judge < line.marks().size(); judge++) {
				Standing.Score.Mark mark = line.marks().get(judge);
				Integer hundredths = mark.given();
				if (hundredths != null) {
					marks.add(new Mark(at, judge + 1, hundredths, mark.use().equals("COUNTED")));
				}
				at++;
			}
			at++;
		}
		return new Given(row, marks, Math.max(0, at - 1));
	}

	private record Mark(int at, int judge, int hundredths, boolean counts) {
	}

	private record Given(Standing.Row row, List<Mark> marks, int room) {

		Strip drawn(int least, int most) {
			return new Strip(this.row, this.marks.stream().map((mark) -> bar(mark, least, most)).toList());
		}

		private Bar bar(Mark mark, int least, int most) {
			int span = Math.max(1, most - least);
			int height = FOOT + (100 - FOOT) * (mark.hundredths() - least) / span;
			return new Bar(Percent.of(10L * mark.at() + 1, 10L * this.room), Percent.of(8, 10L * this.room),
					(100 - height) + "%", height + "%", mark.counts() ? "counts" : "open");
		}

	}

	/** One team. */
	public record Strip(Standing.Row row, List<Bar> bars) {

		public Strip {
			bars = List.copyOf(bars);
		}

	}

}
