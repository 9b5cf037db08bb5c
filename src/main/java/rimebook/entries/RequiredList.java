package rimebook.entries;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.competition.RuleSets;
import rimebook.wording.Sentence;

/**
 * What a segment asks of planned elements: how many of which kinds, and how many in all.
 * A plan that is otherwise is kept all the same; people are told.
 *
 * @param lines how many of which kinds; no kind stands in two of them
 * @param least the fewest elements in all, {@code null} for no figure
 * @param most the most elements in all, {@code null} for no figure
 */
public record RequiredList(List<Line> lines, @Nullable Integer least, @Nullable Integer most) {

	/** Nothing is asked. */
	public static final RequiredList NONE = new RequiredList(List.of(), null, null);

	public RequiredList {
		lines = List.copyOf(lines);
	}

	/** Tell whether nothing is asked. */
	public boolean isEmpty() {
		return equals(NONE);
	}

	/**
	 * What is asked, a sentence each.
	 * @param names names a kind by its sign
	 */
	public List<Sentence> spoken(Function<String, Sentence> names) {
		List<Sentence> spoken = new ArrayList<>();
		this.lines.forEach((line) -> spoken.add(line.spoken(names)));
		if (this.least != null || this.most != null) {
			spoken.add(figures(Sentence.of("required.in-all"), this.least, this.most));
		}
		return spoken;
	}

	/**
	 * What of a plan is otherwise, a sentence each; empty where it is as asked, and where
	 * there is none.
	 * @param codes the plan, in order
	 * @param names names a kind by its sign
	 */
	public List<Sentence> against(List<String> codes, Function<String, Sentence> names) {
		List<Sentence> otherwise = new ArrayList<>();
		if (codes.isEmpty()) {
			return otherwise;
		}
		List<String> planned = codes.stream().map(RuleSets::elementOf).toList();
		for (Line line : this.lines) {
			int there = (int) planned.stream().filter(line::counts).count();
			compare(line.named(names), there, line.least(), line.most(), otherwise);
		}
		compare(Sentence.of("required.in-all"), planned.size(), this.least, this.most, otherwise);
		return otherwise;
	}

	private static void compare(Sentence what, int there, @Nullable Integer least, @Nullable Integer most,
			List<Sentence> otherwise) {
		if (least != null && there < least) {
			otherwise.add(Sentence.of("required.too-few", what, there, least));
		}
		if (most != null && there > most) {
			otherwise.add(Sentence.of("required.too-many", what, there, most));
		}
	}

	private static Sentence figures(Sentence what, @Nullable Integer least, @Nullable Integer most) {
		if (least == null) {
			return Sentence.of("required.at-most", what, (most != null) ? most : 0);
		}
		if (most == null) {
			return Sentence.of("required.at-least", what, least);
		}
		return least.equals(most) ? Sentence.of("required.just", what, least)
				: Sentence.of("required.between", what, least, most);
	}

	/**
	 * The same as it is typed and kept: a line each, such as {@code PB/B 1} or
	 * {@code GL 0-1}.
	 */
	String written() {
		return this.lines.stream().map(Line::written).collect(Collectors.joining("\n"));
	}

	/** The same on the record, on one line. */
	String inWords() {
		return written().replace("\n", "; ") + ", in all " + ((this.least != null) ? this.least : "any") + " to "
				+ ((this.most != null) ? this.most : "any");
	}

	/**
	 * How many of one kind are asked, or of several that may stand for each other.
	 *
	 * @param signs the signs of the kinds, such as {@code PB}
	 */
	public record Line(List<String> signs, int least, int most) {

		public Line {
			signs = List.copyOf(signs);
		}

		boolean counts(String sign) {
			return this.signs.stream().anyMatch(sign::equalsIgnoreCase);
		}

		Sentence named(Function<String, Sentence> names) {
			return this.signs.stream()
				.map(names)
				.reduce((one, other) -> Sentence.of("required.either", one, other))
				.orElse(Sentence.NONE);
		}

		Sentence spoken(Function<String, Sentence> names) {
			return figures(named(names), this.least, this.most);
		}

		String written() {
			return String.join("/", this.signs) + " " + this.least + ((this.most != this.least) ? "-" + this.most : "");
		}

	}

}
