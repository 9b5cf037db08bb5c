package rimebook.points;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.JudgedElement;

/** Puts something else in one place of what the technical panel sent. */
final class SheetEdits {

	private SheetEdits() {
	}

	/** What stands in that place of the elements. */
	static SheetAmendment.ElementAmendment now(List<CalledElement> elements, SheetAmendment.ElementAmendment place) {
		return place.further() ? SheetAmendment.ElementAmendment.nothing(place.number(), true)
				: place.holding(elements.get(place.index(elements.size())));
	}

	/** What stands in that place of the deductions. */
	static SheetAmendment.DeductionAmendment now(List<NotedDeduction> items, SheetAmendment.DeductionAmendment place) {
		return place.further() ? SheetAmendment.DeductionAmendment.nothing(place.number(), true)
				: place.holding(items.get(place.index(items.size())));
	}

	/**
	 * The elements with that in its place.
	 * @param fresh the identity of a further element
	 */
	static List<CalledElement> with(List<CalledElement> elements, SheetAmendment.ElementAmendment other, UUID fresh) {
		List<CalledElement> changed = new ArrayList<>(elements);
		String code = other.code();
		int index = other.index(elements.size() + (other.further() ? 1 : 0));
		if (code == null) {
			changed.remove(index);
		}
		else if (other.further()) {
			changed.add(index, new CalledElement(fresh, 0, code, other.worth(), null, false));
		}
		else {
			changed.set(index, other(elements.get(index), code, other.worth()));
		}
		return numbered(changed);
	}

	private static CalledElement other(CalledElement old, String code, JudgedElement.ElementWorth worth) {
		return new CalledElement(old.id(), old.number(), code, worth, code.equals(old.code()) ? old.base() : null,
				false);
	}

	private static List<CalledElement> numbered(List<CalledElement> elements) {
		List<CalledElement> numbered = new ArrayList<>();
		elements.forEach((element) -> numbered.add(new CalledElement(element.id(), numbered.size() + 1, element.code(),
				element.worth(), element.base(), element.review())));
		return numbered;
	}

	/** The deductions with that in its place. */
	static List<NotedDeduction> with(List<NotedDeduction> items, SheetAmendment.DeductionAmendment other, String by,
			@Nullable Instant at) {
		List<NotedDeduction> changed = new ArrayList<>(items);
		String item = other.item();
		if (item == null) {
			changed.remove(other.index(items.size()));
			return changed;
		}
		NotedDeduction noted = new NotedDeduction(item, other.count(), by, at, null);
		if (other.further()) {
			changed.add(noted);
		}
		else {
			changed.set(other.index(items.size()), noted);
		}
		return changed;
	}

}
