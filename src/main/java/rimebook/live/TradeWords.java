package rimebook.live;

import java.util.List;

import rimebook.competition.JudgingMethod;
import rimebook.published.Standing;

/** The words of the trade that pages explain, by the last part of their keys. */
final class TradeWords {

	private static final List<String> PLACES = List.of("two-marks", "ordinal");

	private static final List<String> POINTS = List.of("base-value", "grade", "component", "left-out", "deduction");

	private static final List<String> ALWAYS = List.of("provisional", "version");

	private TradeWords() {
	}

	/** All of them. */
	static List<String> all() {
		return joined(List.of(PLACES, List.of("majority", "one-by-one", "factored"), POINTS, ALWAYS));
	}

	/** Those that a standing uses. */
	static List<String> of(Standing standing) {
		return of(standing.judgedBy(), !standing.segments().isEmpty());
	}

	/** Those that standings of such an event use. */
	static List<String> of(JudgingMethod method, boolean combined) {
		if (method.isPoints()) {
			return joined(List.of(combined ? List.of() : POINTS, ALWAYS));
		}
		String places = method.equals(JudgingMethod.MAJORITY) ? "majority" : "one-by-one";
		return joined(
				combined ? List.of(List.of(places, "factored"), ALWAYS) : List.of(PLACES, List.of(places), ALWAYS));
	}

	/** The word that a figure of a standing is; empty where it is none. */
	static String ofFigure(String code) {
		return switch (code) {
			case "majority-place", "size-of-majority" -> "majority";
			case "wins", "judges-in-favour" -> "one-by-one";
			default -> "";
		};
	}

	private static List<String> joined(List<List<String>> parts) {
		return parts.stream().flatMap(List::stream).toList();
	}

}
