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
 * @param print what it says; its tag changes when anything in it does
 * @param page what it was found in, never changed
 */
record MovingPart(PartPrint print, Document page) {

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
		return new MovingPart(PartPrint.of(tag, live), page);
	}

	String tag() {
		return this.print.tag();
	}

	/** The part alone, with its tag. */
	String html() {
		return live(this.page).outerHtml();
	}

	/** The page that it was found in, with the tag in its place. */
	String tagged(String page) {
		return page.replace(BEGINS, BEGINS + " " + TAG + "=\"" + tag() + "\"");
	}

	/** What a page that shows an earlier one has not. */
	String since(PartPrint earlier) {
		Element live = live(this.page.clone());
		live.attr("data-since", earlier.tag());
		for (Element row : live.select("tbody[id]")) {
			if (this.print.isSame(row.id(), earlier)) {
				leaveOut(row);
			}
		}
		for (Element opened : live.select("details[id]")) {
			if (this.print.isSame(opened.id(), earlier)) {
				leaveOut(opened);
			}
			else {
				leaveOut(opened.select("tr"), this.print.kept(opened.id(), earlier));
			}
		}
		return live.outerHtml();
	}

	private static Element live(Document page) {
		return page.expectFirst("#" + IDENTITY);
	}

	private static void leaveOut(List<Element> lines, int[] cells) {
		for (int line = 0; line < cells.length; line++) {
			if (cells[line] > 0) {
				lines.get(line).attr(KEPT, String.valueOf(cells[line]));
				lines.get(line).children().subList(0, cells[line]).forEach(Element::remove);
			}
		}
	}

	private static void leaveOut(Element same) {
		String identity = same.id();
		same.empty().clearAttributes().attr("id", identity).attr(KEPT, "");
	}

	/** Written as it was read: no line is broken where none was. */
	private static Document parsed(String html) {
		Document document = Jsoup.parse(html);
		document.outputSettings().prettyPrint(false);
		return document;
	}

}
