package rimebook.testsupport;

import java.util.ArrayList;
import java.util.List;

import org.springframework.context.ApplicationContext;

import rimebook.performances.PerformanceView;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.tabulation.points.JudgedElement;

/** The technical desk of one performance: calls elements, changes and takes out. */
public final class CalledElements {

	private final ElementCalls calls;

	private final PerformanceView performance;

	public CalledElements(ApplicationContext context, PerformanceView performance) {
		this.calls = context.getBean(ElementCalls.class);
		this.performance = performance;
	}

	/** Call these as a new list. */
	public void call(String... codes) {
		keep(List.of(codes).stream().map(CalledElements::counting).toList());
	}

	/** Call the element of that number otherwise. */
	public void change(int number, String code) {
		List<ElementCalls.CallElements.Call> list = list();
		list.set(number - 1, new ElementCalls.CallElements.Call(list.get(number - 1).element(), code,
				JudgedElement.ElementWorth.COUNTS, null));
		keep(list);
	}

	/** Put the element of that number under review. */
	public void review(int number) {
		List<ElementCalls.CallElements.Call> list = list();
		ElementCalls.CallElements.Call call = list.get(number - 1);
		list.set(number - 1,
				new ElementCalls.CallElements.Call(call.element(), call.code(), call.worth(), call.base(), true));
		keep(list);
	}

	/** Give the element of that number no value. */
	public void devalue(int number) {
		List<ElementCalls.CallElements.Call> list = list();
		ElementCalls.CallElements.Call call = list.get(number - 1);
		list.set(number - 1, new ElementCalls.CallElements.Call(call.element(), call.code(),
				JudgedElement.ElementWorth.NO_VALUE, call.base(), false));
		keep(list);
	}

	/** Call one more. */
	public void insert(String code) {
		List<ElementCalls.CallElements.Call> list = list();
		list.add(counting(code));
		keep(list);
	}

	/** Take the element of that number out. */
	public void takeOut(int number) {
		List<ElementCalls.CallElements.Call> list = list();
		list.remove(number - 1);
		keep(list);
	}

	private static ElementCalls.CallElements.Call counting(String code) {
		return new ElementCalls.CallElements.Call(null, code, JudgedElement.ElementWorth.COUNTS, null);
	}

	private List<ElementCalls.CallElements.Call> list() {
		return new ArrayList<>(this.calls.ofPerformance(this.performance.id())
			.orElseThrow()
			.elements()
			.stream()
			.map((element) -> new ElementCalls.CallElements.Call(element.id(), element.code(), element.worth(),
					element.base(), element.review()))
			.toList());
	}

	private void keep(List<ElementCalls.CallElements.Call> list) {
		int sequence = 1 + this.calls.ofPerformance(this.performance.id()).map(CalledListView::sequence).orElse(0);
		this.calls.call(new ElementCalls.CallElements(this.performance.id(), sequence, list),
				SmallCompetition.ACCOUNTANT);
	}

}
