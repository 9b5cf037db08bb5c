package rimebook.live;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.jspecify.annotations.Nullable;

/**
 * An element of a page that this service rendered, and the places in the page's text at
 * which it stands. Read in one pass, since followers wait for it: a parser for anybody's
 * pages took a quarter of the time in which a standing of sixty teams is made anew, most
 * of it for writing again what was there. It reads what our templates write, where every
 * element is closed, in the order in which they were opened; of anything else it says
 * that it cannot.
 */
final class PageElement {

	/** Those that have no end. */
	private static final Set<String> VOID = Set.of("area", "base", "br", "col", "embed", "hr", "img", "input", "link",
			"meta", "source", "track", "wbr");

	/** Those in which nothing is markup. */
	private static final Set<String> TEXT = Set.of("script", "style", "textarea", "title");

	private static final String IDENTITY = " id=\"";

	private final List<PageElement> children = new ArrayList<>();

	private final String name;

	private final String identity;

	private final int from;

	private final int opened;

	private int to;

	private PageElement(String name, String identity, int from, int opened) {
		this.name = name;
		this.identity = identity;
		this.from = from;
		this.opened = opened;
		this.to = opened;
	}

	/**
	 * Read the element that begins at a place; empty where it is not closed, or something
	 * in it is not.
	 */
	static Optional<PageElement> at(String page, int place) {
		Deque<PageElement> open = new ArrayDeque<>();
		int at = place;
		do {
			int tag = page.indexOf('<', at);
			if (tag < 0) {
				return Optional.empty();
			}
			at = past(page, tag, open.peek());
			if (at < 0) {
				return Optional.empty();
			}
			if (isMarkup(page, tag, at, open.peek())) {
				PageElement closed = (page.charAt(tag + 1) == '/') ? close(page, tag + 2, at, open)
						: open(page, tag, at, open);
				if (closed == null) {
					return Optional.empty();
				}
				if (open.isEmpty()) {
					return Optional.of(closed);
				}
			}
		}
		while (true);
	}

	/** Where a tag, or a comment, ends; after the sign that ends it. */
	private static int past(String page, int tag, @Nullable PageElement around) {
		if (around != null && TEXT.contains(around.name) && !page.startsWith("</" + around.name, tag)) {
			return tag + 1;
		}
		if (page.startsWith("<!--", tag)) {
			int end = page.indexOf("-->", tag);
			return (end < 0) ? -1 : end + 3;
		}
		boolean quoted = false;
		for (int i = tag; i < page.length(); i++) {
			char sign = page.charAt(i);
			quoted ^= sign == '"';
			if (sign == '>' && !quoted) {
				return i + 1;
			}
		}
		return -1;
	}

	private static boolean isMarkup(String page, int tag, int past, @Nullable PageElement around) {
		return past > tag + 1 && page.charAt(tag + 1) != '!'
				&& (around == null || !TEXT.contains(around.name) || page.charAt(tag + 1) == '/');
	}

	private static @Nullable PageElement close(String page, int name, int ends, Deque<PageElement> open) {
		PageElement last = open.poll();
		if (last == null || !page.startsWith(last.name + ">", name)) {
			return null;
		}
		last.to = ends;
		return last;
	}

	private static PageElement open(String page, int tag, int ends, Deque<PageElement> open) {
		PageElement next = new PageElement(name(page, tag + 1), identity(page, tag, ends), tag, ends);
		PageElement around = open.peek();
		if (around != null) {
			around.children.add(next);
		}
		if (!VOID.contains(next.name) && page.charAt(ends - 2) != '/') {
			open.push(next);
		}
		return next;
	}

	private static String name(String page, int begins) {
		int ends = begins;
		while (Character.isLetterOrDigit(page.charAt(ends)) || page.charAt(ends) == '-') {
			ends++;
		}
		return page.substring(begins, ends);
	}

	private static String identity(String page, int tag, int ends) {
		int begins = page.indexOf(IDENTITY, tag);
		if (begins < 0 || begins >= ends) {
			return "";
		}
		int value = begins + IDENTITY.length();
		return page.substring(value, page.indexOf('"', value));
	}

	boolean isNamed(String wanted) {
		return this.name.equals(wanted);
	}

	String name() {
		return this.name;
	}

	/** As it is written in the page, empty where it has none. */
	String identity() {
		return this.identity;
	}

	/** Where its tag begins. */
	int from() {
		return this.from;
	}

	/** Where that tag ends. */
	int opened() {
		return this.opened;
	}

	/** Where all of it ends. */
	int to() {
		return this.to;
	}

	List<PageElement> children() {
		return this.children;
	}

	/** Do something with all elements in it, in the order of the page. */
	void within(Consumer<PageElement> visitor) {
		this.children.forEach((child) -> {
			visitor.accept(child);
			child.within(visitor);
		});
	}

	/** List those in it that have a name, in the order of the page. */
	List<PageElement> within(String wanted) {
		List<PageElement> found = new ArrayList<>();
		within((element) -> {
			if (element.isNamed(wanted)) {
				found.add(element);
			}
		});
		return found;
	}

}
