package rimebook.points;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.ElementWorth;

/** Puts another text in one place of what the technical panel sent. */
final class SheetEdits {

	private SheetEdits() {
	}

	/** What stands in a place of the elements. */
	static String text(List<CalledElement> elements, SheetLine line) {
		return line.further() ? "" : SheetLine.text(elements.get(index(line, elements.size())));
	}

	/** What stands in a place of the deductions. */
	static String noted(List<NotedDeduction> items, SheetLine line) {
		if (line.further()) {
			return "";
		}
		NotedDeduction item = items.get(index(line, items.size()));
		return SheetLine.text(item.item(), item.count());
	}

	/**
	 * The elements with another text in one place.
	 * @param fresh the identity of a further element
	 */
	static List<CalledElement> elements(List<CalledElement> elements, SheetLine line, String text, UUID fresh) {
		List<CalledElement> changed = new ArrayList<>(elements);
		int index = index(line, elements.size() + (line.further() ? 1 : 0));
		if (line.further()) {
			changed.add(index, new CalledElement(fresh, 0, SheetLine.code(text), SheetLine.worth(text), null, false));
		}
		else if (text.isEmpty()) {
			changed.remove(index);
		}
		else {
			changed.set(index, other(elements.get(index), text));
		}
		return numbered(changed);
	}

	private static CalledElement other(CalledElement old, String text) {
		String code = SheetLine.code(text);
		ElementWorth worth = SheetLine.worth(text);
		return new CalledElement(old.id(), old.number(), code, worth, code.equals(old.code()) ? old.base() : null,
				false);
	}

	private static List<CalledElement> numbered(List<CalledElement> elements) {
		List<CalledElement> numbered = new ArrayList<>();
		elements.forEach((element) -> numbered.add(new CalledElement(element.id(), numbered.size() + 1, element.code(),
				element.worth(), element.base(), element.review())));
		return numbered;
	}

	/** The deductions with another text in one place. */
	static List<NotedDeduction> deductions(List<NotedDeduction> items, SheetLine line, String text, String by,
			@Nullable Instant at) {
		List<NotedDeduction> changed = new ArrayList<>(items);
		if (line.further()) {
			changed.add(noted(text, by, at));
			return changed;
		}
		int index = index(line, items.size());
		if (text.isEmpty()) {
			changed.remove(index);
		}
		else {
			changed.set(index, noted(text, by, at));
		}
		return changed;
	}

	private static NotedDeduction noted(String text, String by, @Nullable Instant at) {
		return new NotedDeduction(SheetLine.code(text), SheetLine.count(text), by, at, null);
	}

	private static int index(SheetLine line, int size) {
		if (line.number() > size) {
			throw SheetLine.unknown();
		}
		return line.number() - 1;
	}

}
