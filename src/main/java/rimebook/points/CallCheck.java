package rimebook.points;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.ValueTable;
import rimebook.wording.Sentence;

/** Makes a numbered list of what was called, refusing what the table does not have. */
final class CallCheck {

	/** Far more than any programme has. */
	static final int MOST_ELEMENTS = 40;

	private static final int LONGEST_CODE = 20;

	private static final int HIGHEST_BASE = 100_000;

	private final ValueTable values;

	private final Supplier<UUID> ids;

	CallCheck(ValueTable values, Supplier<UUID> ids) {
		this.values = values;
		this.ids = ids;
	}

	/**
	 * Make the list.
	 * @param ever the identities of all elements called so far, so that one which was
	 * taken out can come back with its grades
	 */
	List<CalledElement> elements(List<ElementCalls.CallElements.Call> calls, Set<UUID> ever) {
		if ((calls.isEmpty() && ever.isEmpty()) || calls.size() > MOST_ELEMENTS) {
			throw new RuleViolationException("elements-number", "calls",
					Sentence.of("points.elements-number", MOST_ELEMENTS, calls.size()));
		}
		Set<UUID> known = new HashSet<>(ever);
		List<CalledElement> elements = new ArrayList<>();
		for (ElementCalls.CallElements.Call call : calls) {
			elements.add(element(call, elements.size(), known));
		}
		return elements;
	}

	private CalledElement element(ElementCalls.CallElements.Call call, int index, Set<UUID> known) {
		String field = "calls[" + index + "]";
		String code = Required.text(field + ".code", call.code(), LONGEST_CODE);
		if (call.worth() == JudgedElement.ElementWorth.COUNTS && this.values.find(code).isEmpty()) {
			throw new RuleViolationException("unknown-code", field + ".code",
					Sentence.of("points.unknown-code.called", code));
		}
		if (call.base() != null) {
			Required.number(field + ".base", call.base(), 0, HIGHEST_BASE);
		}
		if (call.element() != null && !known.remove(call.element())) {
			throw new RuleViolationException("element-unknown", field + ".element",
					Sentence.of("points.element-unknown", index + 1));
		}
		return new CalledElement((call.element() != null) ? call.element() : this.ids.get(), index + 1, code,
				call.worth(), call.base(), call.review());
	}

	/** Tell whether two lists say the same, whatever the identities of new elements. */
	static boolean areSame(List<CalledElement> one, List<CalledElement> other) {
		return one.size() == other.size()
				&& IntStream.range(0, one.size()).allMatch((i) -> one.get(i).inWords().equals(other.get(i).inWords()));
	}

}
