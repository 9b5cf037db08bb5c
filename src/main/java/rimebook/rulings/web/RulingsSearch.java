package rimebook.rulings.web;

import java.util.Locale;
import java.util.stream.Stream;

import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;

/**
 * What the list is narrowed to.
 *
 * @param words that must stand in the team, club, event, question or ruling; empty for
 * all
 * @param state open, answered, or anything else for both
 */
record RulingsSearch(String words, String state) {

	boolean finds(QuestionView question) {
		return isInState(question) && Stream.of(this.words.toLowerCase(Locale.ROOT).strip().split("\\s+"))
			.allMatch((word) -> text(question).contains(word));
	}

	private boolean isInState(QuestionView question) {
		return switch (this.state) {
			case "open" -> question.isOpen();
			case "answered" -> !question.isOpen();
			default -> true;
		};
	}

	private static String text(QuestionView question) {
		RulingView current = question.current();
		String ruling = (current != null) ? current.answer().grounds() + " " + current.answer().condition() : "";
		return String
			.join(" ", question.team(), question.party().club(), question.about().event(), question.text(),
					question.asked().askedBy(), ruling)
			.toLowerCase(Locale.ROOT);
	}

}
