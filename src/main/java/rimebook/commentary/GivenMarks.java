package rimebook.commentary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.tabulation.SegmentKind;

/**
 * What the panel gave a team as it was published, line by line, with its highest, its
 * lowest and how far these lie apart.
 *
 * @param judges the numbers of the judges in the order of the marks
 * @param lines both rows of marks; in points judging the components
 * @param elements the grades of each element, empty in placement judging
 * @param score what the points are made of, {@code null} in placement judging
 */
public record GivenMarks(List<Integer> judges, List<Line> lines, List<Line> elements, Standing.@Nullable Score score) {

	public GivenMarks {
		judges = List.copyOf(judges);
		lines = List.copyOf(lines);
		elements = List.copyOf(elements);
	}

	/** Read a row of a standing; nothing is in it where the team has no marks. */
	static GivenMarks of(Standing.Row row, Standing standing, SegmentKind kind) {
		Standing.Score score = row.score();
		if (score == null) {
			return new GivenMarks(standing.judgeNumbers(), pairs(row.cards(), kind), List.of(), null);
		}
		return new GivenMarks(IntStream.rangeClosed(1, standing.judges()).boxed().toList(),
				score.componentLines()
					.stream()
					.map((line) -> Line.of("", line.name(), given(line.marks())))
					.flatMap(Optional::stream)
					.toList(),
				score.elementLines()
					.stream()
					.map((line) -> Line.of("", line.number() + " " + line.code(), given(line.grades())))
					.flatMap(Optional::stream)
					.toList(),
				score);
	}

	private static List<Line> pairs(List<Standing.Card> cards, SegmentKind kind) {
		String first = (kind == SegmentKind.SHORT) ? "live.marks.elements" : "live.marks.merit";
		return Stream
			.of(Line.of(first, "", each(cards, Standing.Card::first)),
					Line.of("live.marks.presentation", "", each(cards, Standing.Card::second)))
			.flatMap(Optional::stream)
			.toList();
	}

	private static List<@Nullable Integer> given(List<Standing.Score.Mark> marks) {
		return each(marks, Standing.Score.Mark::given);
	}

	private static <T> List<@Nullable Integer> each(List<T> of, Function<T, @Nullable Integer> mark) {
		List<@Nullable Integer> marks = new ArrayList<>();
		of.forEach((one) -> marks.add(mark.apply(one)));
		return marks;
	}

	/** Tell whether the panel gave nothing. */
	public boolean isEmpty() {
		return this.lines.isEmpty() && this.elements.isEmpty();
	}

	/**
	 * One line: what each judge gave one thing.
	 *
	 * @param key the message that names it, empty where it has a name of its own
	 * @param name its own name, as in the rule set
	 * @param given one a judge in panel order, {@code null} where a judge gave none;
	 * marks are in hundredths, grades as given
	 * @param high the highest of them
	 * @param low the lowest of them
	 */
	public record Line(String key, String name, List<@Nullable Integer> given, int high, int low) {

		private static Optional<Line> of(String key, String name, Collection<@Nullable Integer> given) {
			List<Integer> there = new ArrayList<>();
			for (Integer mark : given) {
				if (mark != null) {
					there.add(mark);
				}
			}
			there.sort(Comparator.naturalOrder());
			return there.isEmpty() ? Optional.empty() : Optional
				.of(new Line(key, name, new ArrayList<>(given), there.get(there.size() - 1), there.get(0)));
		}

		/** How far the highest and the lowest lie apart. */
		public int spread() {
			return this.high - this.low;
		}

	}

}
