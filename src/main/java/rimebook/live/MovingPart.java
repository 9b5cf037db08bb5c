package rimebook.live;

import java.util.List;
import java.util.Optional;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * The part of a public page that moves. It bears a tag of its contents, by which a page
 * that shows it says what it has; then only what differs is sent: of rows that are the
 * same, and of what rows open, the identity, and of a line in it no cell that the page
 * has before the first that differs.
 *
 * <p>
 * A row is a {@code tbody} and what it opens a {@code details} element, both with an
 * identity of their own. Where something is left out, {@code data-kept} stands, and
 * {@code data-since} says to which earlier part it belongs. {@code rows.js} fills in.
 *
 * @param tag changes when anything in it does
 * @param page what it was found in, never changed
 */
record MovingPart(String tag, Document page) {

	private static final String IDENTITY = "live";

	private static final String BEGINS = "id=\"" + IDENTITY + "\"";

	private static final String TAG = "data-tag";

	private static final int LENGTH = 12;

	private static final String KEPT = "data-kept";

	/** That of a page, or of a part alone; none in a page that does not move. */
	static Optional<MovingPart> in(String page) {
		return page.contains(BEGINS) ? Optional.of(of(parsed(page))) : Optional.empty();
	}

	private static MovingPart of(Document page) {
		Element live = live(page);
		live.removeAttr(TAG);
		String tag = Rendition.digest(live.outerHtml()).substring(0, LENGTH);
		live.attr(TAG, tag);
		return new MovingPart(tag, page);
	}

	/** The part alone, with its tag. */
	String html() {
		return live(this.page).outerHtml();
	}

	/** The page that it was found in, with the tag in its place. */
	String tagged(String page) {
		return page.replace(BEGINS, BEGINS + " " + TAG + "=\"" + this.tag + "\"");
	}

	/** What a page that shows an earlier one has not. */
	String since(MovingPart earlier) {
		Element live = live(this.page.clone());
		Element shown = live(earlier.page);
		live.attr("data-since", earlier.tag);
		for (Element row : live.select("tbody[id]")) {
			Element other = shown.getElementById(row.id());
			if (other != null && isSame(row, other)) {
				leaveOut(row);
			}
		}
		for (Element opened : live.select("details[id]")) {
			Element other = shown.getElementById(opened.id());
			if (other != null && isSame(opened, other)) {
				leaveOut(opened);
			}
			else if (other != null) {
				leaveOutCells(opened.select("tr"), other.select("tr"));
			}
		}
		return live.outerHtml();
	}

	private static Element live(Document page) {
		return page.expectFirst("#" + IDENTITY);
	}

	private static void leaveOutCells(List<Element> lines, List<Element> others) {
		for (int i = 0; i < Math.min(lines.size(), others.size()); i++) {
			List<Element> cells = lines.get(i).children();
			List<Element> known = others.get(i).children();
			int same = 0;
			while (same < Math.min(cells.size(), known.size()) && isKept(cells.get(same), known.get(same))) {
				same++;
			}
			if (same > 0) {
				lines.get(i).attr(KEPT, String.valueOf(same));
				cells.subList(0, same).forEach(Element::remove);
			}
		}
	}

	private static void leaveOut(Element same) {
		String identity = same.id();
		same.empty().clearAttributes().attr("id", identity).attr(KEPT, "");
	}

	/** Lines are counted, so none is left out with a cell. */
	private static boolean isKept(Element cell, Element other) {
		return isSame(cell, other) && cell.selectFirst("tr") == null;
	}

	private static boolean isSame(Element one, Element other) {
		return one.outerHtml().equals(other.outerHtml());
	}

	/** Written as it was read: no line is broken where none was. */
	private static Document parsed(String html) {
		Document document = Jsoup.parse(html);
		document.outputSettings().prettyPrint(false);
		return document;
	}

}
