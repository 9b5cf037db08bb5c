package rimebook.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.points.ElementCalls.CallElements.Call;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.ValueTable;
import rimebook.wording.Sentence;

/** Makes the next list out of the one that was seen and one act of the technical desk. */
final class EditedList {

	private static final int LONGEST_CODE = 20;

	private final List<Call> calls;

	private final List<CalledElement> before;

	private final CodeChange codes;

	/**
	 * Begin with a list.
	 * @param seen the elements as they were seen
	 * @param before the elements of the version before, for going back
	 */
	EditedList(List<CalledElement> seen, List<CalledElement> before, ValueTable values) {
		this.calls = new ArrayList<>(seen.stream().map(EditedList::call).toList());
		this.before = before;
		this.codes = new CodeChange(values);
	}

	/**
	 * Make the next list.
	 * @throws RuleViolationException {@code element-not-chosen}, {@code no-further}, or
	 * {@code code-change} with the reason
	 */
	List<Call> apply(TechnicalDesk.Edit edit) {
		switch (edit.act()) {
			case CALL -> this.calls.add(fresh(edit.value()));
			case INSERT -> this.calls.add(place(edit.element()), fresh(edit.value()));
			case CODE -> change(edit, (call) -> coded(call, fresh(edit.value()).code()));
			case LEVEL -> change(edit, (call) -> coded(call, this.codes.level(call.code(), edit.value())));
			case PART -> change(edit, (call) -> coded(call, this.codes.part(call.code(), edit.value())));
			case DOWNGRADE -> change(edit, (call) -> coded(call, this.codes.downgrade(call.code())));
			case REVIEW -> change(edit, EditedList::reviewed);
			case NO_VALUE -> change(edit, (call) -> worth(call, JudgedElement.ElementWorth.NO_VALUE));
			case TOO_MANY -> change(edit, (call) -> worth(call, JudgedElement.ElementWorth.TOO_MANY));
			case EARLIER -> move(place(edit.element()), -1);
			case LATER -> move(place(edit.element()), 1);
			case REMOVE -> this.calls.remove(place(edit.element()));
			case UNDO -> goBack();
		}
		return List.copyOf(this.calls);
	}

	private void goBack() {
		this.calls.clear();
		this.before.stream().map(EditedList::call).forEach(this.calls::add);
	}

	private void change(TechnicalDesk.Edit edit, UnaryOperator<Call> changed) {
		int place = place(edit.element());
		this.calls.set(place, changed.apply(this.calls.get(place)));
	}

	private void move(int from, int by) {
		int to = from + by;
		if (to < 0 || to >= this.calls.size()) {
			throw new RuleViolationException("no-further", "element",
					Sentence.of((by < 0) ? "points.first-already" : "points.last-already"));
		}
		Collections.swap(this.calls, from, to);
	}

	private int place(@Nullable UUID element) {
		for (int i = 0; i < this.calls.size(); i++) {
			if (element != null && element.equals(this.calls.get(i).element())) {
				return i;
			}
		}
		throw new RuleViolationException("element-not-chosen", "element", Sentence.of("points.element-not-chosen"));
	}

	private static Call fresh(String code) {
		return new Call(null, Required.text("value", code, LONGEST_CODE), JudgedElement.ElementWorth.COUNTS, null);
	}

	static Call call(CalledElement element) {
		return new Call(element.id(), element.code(), element.worth(), element.base(), element.review());
	}

	/** Another base value was meant for the code before, so it goes with it. */
	private static Call coded(Call call, String code) {
		return new Call(call.element(), code, call.worth(), call.code().equals(code) ? call.base() : null,
				call.review());
	}

	private static Call reviewed(Call call) {
		return new Call(call.element(), call.code(), call.worth(), call.base(), !call.review());
	}

	private static Call worth(Call call, JudgedElement.ElementWorth worth) {
		JudgedElement.ElementWorth next = (call.worth() == worth) ? JudgedElement.ElementWorth.COUNTS : worth;
		return new Call(call.element(), call.code(), next, call.base(), call.review());
	}

}
