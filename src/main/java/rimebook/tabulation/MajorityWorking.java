package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;

/** The way through the columns "1st", "2nd or better", … until a majority appears. */
record MajorityWorking(Figures.MajorityFigures figures, List<Integer> ordinals) {

	List<String> lines() {
		List<Integer> ascending = this.ordinals.stream().sorted().toList();
		List<String> lines = new ArrayList<>();
		lines.add("A majority is " + Phrases.number(ascending.size() / 2 + 1) + " of "
				+ Phrases.judges(ascending.size()));
		ascending.stream()
			.distinct()
			.filter((ordinal) -> ordinal <= this.figures.majorityPlace())
			.forEach((ordinal) -> lines.add(column(ordinal)));
		lines.add("Total of those ordinals: " + sum(ascending.subList(0, this.figures.size())));
		lines.add("Total of all ordinals: " + sum(ascending));
		return lines;
	}

	private String column(int place) {
		int judges = (int) this.ordinals.stream().filter((ordinal) -> ordinal <= place).count();
		return Phrases.orBetter(place) + ": " + Phrases.judges(judges) + ", "
				+ ((place == this.figures.majorityPlace()) ? "a majority" : "no majority");
	}

	private static String sum(List<Integer> ordinals) {
		String terms = String.join(" + ", ordinals.stream().map(Hundredths::plain).toList());
		int sum = ordinals.stream().mapToInt(Integer::intValue).sum();
		return (ordinals.size() == 1) ? terms : terms + " = " + Hundredths.plain(sum);
	}

}
