package rimebook.points;

import java.util.ArrayList;
import java.util.List;

/**
 * Follows a plan while elements are called. A planned element counts as called when one
 * of its kind was, at whatever level; what is next comes after the last of those.
 */
final class PlanProgress {

	private PlanProgress() {
	}

	static List<TechnicalDesk.PlannedLine> of(List<String> planned, List<String> called) {
		List<String> kinds = new ArrayList<>(called.stream().map(CodeChange::element).toList());
		List<Boolean> found = planned.stream().map((code) -> kinds.remove(CodeChange.element(code))).toList();
		int last = found.lastIndexOf(true);
		List<TechnicalDesk.PlannedLine> lines = new ArrayList<>();
		for (int i = 0; i < planned.size(); i++) {
			lines.add(new TechnicalDesk.PlannedLine(i + 1, planned.get(i), state(found.get(i), i, last)));
		}
		return lines;
	}

	private static TechnicalDesk.PlannedLine.State state(boolean called, int index, int last) {
		if (called) {
			return TechnicalDesk.PlannedLine.State.CALLED;
		}
		if (index < last) {
			return TechnicalDesk.PlannedLine.State.PASSED;
		}
		return (index == last + 1) ? TechnicalDesk.PlannedLine.State.NEXT : TechnicalDesk.PlannedLine.State.TO_COME;
	}

}
