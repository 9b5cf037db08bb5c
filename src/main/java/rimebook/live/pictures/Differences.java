package rimebook.live.pictures;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;

/**
 * How the points of two teams differ, element by element in the order of their
 * programmes, then component by component, then what was taken off.
 */
public record Differences(List<Line> lines) {

	public Differences {
		lines = List.copyOf(lines);
	}

	/**
	 * Put two scores beside each other.
	 * @param one of the team that is ahead
	 * @param other of the other
	 */
	public static Differences of(Standing.Score one, Standing.Score other) {
		List<Raw> raw = new ArrayList<>();
		int most = Math.max(one.elementLines().size(), other.elementLines().size());
		for (int i = 0; i < most; i++) {
			raw.add(element(i + 1, at(one.elementLines(), i), at(other.elementLines(), i)));
		}
		for (Standing.Score.ComponentLine line : one.componentLines()) {
			other.componentLines()
				.stream()
				.filter((theirs) -> theirs.name().equals(line.name()))
				.forEach((theirs) -> raw
					.add(new Raw(Kind.COMPONENT, 0, line.name(), "", line.points(), theirs.points())));
		}
		if (one.deducted() > 0 || other.deducted() > 0) {
			raw.add(new Raw(Kind.DEDUCTIONS, 0, "", "", -one.deducted(), -other.deducted()));
		}
		int widest = raw.stream().mapToInt((line) -> Math.abs(line.difference())).max().orElse(0);
		return new Differences(raw.stream().map((line) -> line.drawn(Math.max(1, widest))).toList());
	}

	private static <T> @Nullable T at(List<T> lines, int index) {
		return (index < lines.size()) ? lines.get(index) : null;
	}

	private static Raw element(int number, Standing.Score.@Nullable ElementLine one,
			Standing.Score.@Nullable ElementLine other) {
		return new Raw(Kind.ELEMENT, number, (one != null) ? one.code() : "–", (other != null) ? other.code() : "–",
				(one != null) ? one.score() : 0, (other != null) ? other.score() : 0);
	}

	/** What a line is about. */
	public enum Kind {

		/** An element, by its place in the programme. */
		ELEMENT,

		/** A component, by its name. */
		COMPONENT,

		/** All that was taken off. */
		DEDUCTIONS

	}

	private record Raw(Kind kind, int number, String one, String other, int own, int theirs) {

		int difference() {
			return this.own - this.theirs;
		}

		Line drawn(int widest) {
			int by = difference();
			int half = 2 * widest;
			Bar bar = Bar.lying(Percent.of((by > 0) ? widest - by : widest, half), Percent.of(Math.abs(by), half),
					(by > 0) ? "ahead" : "behind");
			return new Line(this.kind, this.number, this.one, this.other, this.own, this.theirs, bar);
		}

	}

	/**
	 * One line. Points are in hundredths, what is taken off negative.
	 *
	 * @param number of the element in the programme, 0 for others
	 * @param one the code, or the name of a component
	 * @param other the code of the other team's element
	 * @param bar to the left where the first team has more, to the right where the other
	 * has
	 */
	public record Line(Kind kind, int number, String one, String other, int own, int theirs, Bar bar) {

		/** By how much the first team has more; negative where the other has. */
		public int difference() {
			return this.own - this.theirs;
		}

	}

}
