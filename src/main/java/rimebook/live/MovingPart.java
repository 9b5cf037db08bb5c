package rimebook.live;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The part of a public page that moves. It bears a tag of its contents, by which a page
 * that shows it says what it has; then only what differs is sent: of rows that are the
 * same, and of what rows open, the identity, and of a line in it no cell that the page
 * has before the first that differs.
 *
 * <p>
 * A row is a {@code tbody} and what it opens a {@code details} element, both with an
 * identity of their own. Where something is left out, {@code data-kept} stands, and
 * {@code data-since} says to which earlier part it belongs. {@code follow.js} fills in.
 *
 * @param print what it says; its tag changes when anything in it does
 * @param text the part alone, without its tag
 * @param pieces what can be left out of it, in the order of the text
 */
record MovingPart(PartPrint print, String text, List<Piece> pieces) {

	private static final String BEGINS = "id=\"live\"";

	private static final String TAG = "data-tag";

	private static final Pattern TAGGED = Pattern.compile(BEGINS + " " + TAG + "=\"[0-9a-f]*\"");

	private static final int LENGTH = 12;

	private static final String KEPT = "data-kept";

	MovingPart {
		pieces = List.copyOf(pieces);
	}

	/**
	 * That of a page, or of a part alone; none in a page that does not move, or in which
	 * an element is not closed.
	 */
	static Optional<MovingPart> in(String page) {
		String untagged = TAGGED.matcher(page).replaceFirst(BEGINS);
		int identity = untagged.indexOf(BEGINS);
		return (identity < 0) ? Optional.empty()
				: PageElement.at(untagged, untagged.lastIndexOf('<', identity)).map((live) -> of(untagged, live));
	}

	private static MovingPart of(String page, PageElement live) {
		String text = page.substring(live.from(), live.to());
		List<Piece> pieces = new ArrayList<>();
		live.within((element) -> {
			if (!element.identity().isEmpty() && (element.isNamed("tbody") || element.isNamed("details"))) {
				pieces.add(Piece.of(element, live.from()));
			}
		});
		return new MovingPart(PartPrint.of(Rendition.digest(text).substring(0, LENGTH), text, pieces), text, pieces);
	}

	String tag() {
		return this.print.tag();
	}

	/** The part alone, with its tag. */
	String html() {
		return tagged(this.text);
	}

	/** The page that it was found in, with the tag in its place. */
	String tagged(String page) {
		return page.replace(BEGINS, BEGINS + " " + TAG + "=\"" + tag() + "\"");
	}

	/** What a page that shows an earlier one has not. */
	String since(PartPrint earlier) {
		StringBuilder rest = new StringBuilder();
		int at = 0;
		for (Cut cut : cuts(earlier)) {
			// What is in something that is left out is left out with it.
			if (cut.from() >= at) {
				rest.append(this.text, at, cut.from()).append(cut.instead());
				at = cut.to();
			}
		}
		rest.append(this.text, at, this.text.length());
		return tagged(rest.toString()).replaceFirst(BEGINS, BEGINS + " data-since=\"" + earlier.tag() + "\"");
	}

	private List<Cut> cuts(PartPrint earlier) {
		return this.pieces.stream()
			.flatMap((piece) -> this.print.isSame(piece.identity(), earlier) ? Stream.of(piece.leftOut())
					: piece.without(this.print.kept(piece.identity(), earlier)))
			.sorted(Comparator.comparingInt(Cut::from))
			.toList();
	}

	/**
	 * What is left out of the text.
	 *
	 * @param instead what stands there then
	 */
	private record Cut(int from, int to, String instead) {
	}

	/**
	 * A row, or what a row opens; places are counted in the text.
	 *
	 * @param lines the lines in it, none of a row
	 */
	record Piece(String element, String identity, int from, int to, List<Line> lines) {

		Piece {
			lines = List.copyOf(lines);
		}

		private static Piece of(PageElement element, int begins) {
			return new Piece(element.name(), element.identity(), element.from() - begins, element.to() - begins,
					element.isNamed("details") ? lines(element, begins) : List.of());
		}

		private static List<Line> lines(PageElement opened, int begins) {
			Set<PageElement> inner = new HashSet<>();
			opened.within("details").forEach((details) -> inner.addAll(details.within("tr")));
			return opened.within("tr")
				.stream()
				.map((line) -> new Line(!inner.contains(line), line.opened() - begins,
						line.children().stream().map((cell) -> Cell.of(cell, begins)).toList()))
				.toList();
		}

		private Cut leftOut() {
			return new Cut(this.from, this.to,
					"<%1$s id=\"%2$s\" %3$s=\"\"></%1$s>".formatted(this.element, this.identity, KEPT));
		}

		private Stream<Cut> without(int[] cells) {
			return IntStream.range(0, cells.length)
				.filter((line) -> cells[line] > 0 && this.lines.get(line).own())
				.mapToObj((line) -> this.lines.get(line).without(cells[line]));
		}

	}

	/**
	 * A line.
	 *
	 * @param own whether nothing else that opens is around it
	 * @param opened where its own tag ends, in which {@code data-kept} may stand
	 */
	record Line(boolean own, int opened, List<Cell> cells) {

		Line {
			cells = List.copyOf(cells);
		}

		private Cut without(int first) {
			return new Cut(this.opened - 1, this.cells.get(first - 1).to(), " " + KEPT + "=\"" + first + "\">");
		}

	}

	/**
	 * A cell of a line.
	 *
	 * @param simple whether it holds no lines itself
	 */
	record Cell(int from, int to, boolean simple) {

		private static Cell of(PageElement cell, int begins) {
			return new Cell(cell.from() - begins, cell.to() - begins, cell.within("tr").isEmpty());
		}

	}

}
