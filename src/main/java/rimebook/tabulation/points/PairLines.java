package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;

/** Two scores line by line beside each other. */
record PairLines(PerformanceScore own, PerformanceScore theirs) {

	private static final String BESIDE = " | ";

	List<String> lines() {
		List<String> lines = new ArrayList<>();
		int most = Math.max(this.own.elements().size(), this.theirs.elements().size());
		for (int i = 0; i < most; i++) {
			lines.add(element(this.own, i) + BESIDE + element(this.theirs, i));
		}
		for (int i = 0; i < this.own.components().size(); i++) {
			PerformanceScore.ComponentScore one = this.own.components().get(i);
			lines.add(one.rule().name() + " " + one.points() + BESIDE + this.theirs.components().get(i).points());
		}
		return lines;
	}

	private static String element(PerformanceScore score, int index) {
		if (index >= score.elements().size()) {
			return "-";
		}
		PerformanceScore.ElementScore element = score.elements().get(index);
		return element.element().number() + ". " + element.element().code() + " " + element.score();
	}

}
