package rimebook.rulings;

/**
 * A ruling on a question.
 *
 * @param seen how many rulings on it the referee was looking at: 0 to answer, more to
 * supersede the last
 * @param condition under which it is allowed, up to 1000 characters; empty unless the
 * verdict has one
 * @param grounds why, up to 2000 characters
 * @param rule the rule it rests on, up to 200 characters; may be empty
 * @param shown whether the public may see it
 * @param reason why the ruling before no longer holds, up to 500 characters; empty for
 * the first
 */
public record GiveRuling(QuestionId question, int seen, Verdict verdict, String condition, String grounds, String rule,
		boolean shown, String reason) {
}
