package rimebook.stand.web;

import java.util.List;

import rimebook.rulings.QuestionView;

/**
 * The rulings of the team on the ice or, between two, of the next one.
 *
 * @param team empty where nobody is left
 * @param given what was ruled
 * @param open what still waits for the referee
 */
record RulingsPart(String team, List<QuestionView> given, List<QuestionView> open) implements LivePart {

	static final RulingsPart NONE = new RulingsPart("", List.of(), List.of());

}
